import type { JSX } from 'preact';
import { clamp01, pressureStep, roundPlace } from '../scale.ts';

/** Spacing of the oil hatch for pressure steps 1 to 5. Oil leans the other way from cut metal, so the two cannot be taken for each other. */
const OIL_SPACING = [13, 9.5, 7, 5, 3.6] as const;

export function HatchDefs({ id }: { id: string }): JSX.Element {
  return (
    <defs>
      {['', '2'].map((other) => (
        <pattern
          key={other}
          id={`${id}-cut${other}`}
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform={`rotate(${other ? -45 : 45})`}
        >
          <rect class="dw-hatch-bg" width="6" height="6" />
          <path class="dw-hatch" d="M3 0V6" />
        </pattern>
      ))}
      {OIL_SPACING.map((s, i) => (
        <pattern
          key={s}
          id={`${id}-p${i + 1}`}
          width={s}
          height={s}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <path class="dw-oil-hatch" d={`M${s / 2} 0V${s}`} />
        </pattern>
      ))}
    </defs>
  );
}

/** Cut metal. `other` leans the hatch the other way: two parts that touch are told apart so on any workshop drawing. */
export function Cut({
  id,
  d,
  other = false,
}: {
  id: string;
  d: string;
  other?: boolean;
}): JSX.Element {
  return (
    <path class="dw-cut" fill={`url(#${id}-${other ? 'cut2' : 'cut'})`} fill-rule="evenodd" d={d} />
  );
}

/** Oil under pressure: share 0..1 of the drawing's full scale, as a tint of ink and a hatch that closes up. */
export function Oil({ id, d, pressure }: { id: string; d: string; pressure: number }): JSX.Element {
  const step = pressureStep(pressure);
  return (
    <g>
      <path class="dw-void" d={d} />
      <path class="dw-oil" fill-opacity={roundPlace(0.05 + 0.42 * clamp01(pressure))} d={d} />
      {step > 0 && <path fill={`url(#${id}-p${step})`} d={d} />}
    </g>
  );
}

export const box = (x: number, y: number, w: number, h: number): string =>
  `M${roundPlace(x)} ${roundPlace(y)}h${roundPlace(w)}v${roundPlace(h)}h${roundPlace(-w)}z`;
