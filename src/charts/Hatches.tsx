import { still } from '../ui/still.ts';

/** The hatch patterns of one picture. Ids carry the picture's id: patterns are page-wide in SVG. */
export type HatchDensity = 'sparse' | 'even' | 'dense' | 'cross';

export const hatchFill = (id: string, density: HatchDensity): string => `url(#${id}-${density})`;

const SPACING = { sparse: 11, even: 7, dense: 4, cross: 6 } as const;

export const Hatches = still(({ id }: { readonly id: string }) => (
  <defs>
    {(Object.keys(SPACING) as HatchDensity[]).map((density) => (
      <pattern
        key={density}
        id={`${id}-${density}`}
        width={SPACING[density]}
        height={SPACING[density]}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path
          class="hatch-line"
          d={density === 'cross' ? 'M0 0V6M0 0H6' : `M0 0V${SPACING[density]}`}
        />
      </pattern>
    ))}
  </defs>
));
