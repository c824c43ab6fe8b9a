import { hatchFill, Hatches } from '../../charts/Hatches.tsx';
import { columnsOf, LAST } from './columns-of.ts';
import type { ShelfModel } from './model.ts';
import { printCount, printIn100 } from './print.ts';
import { words } from './words.en.ts';

const ID = 'stock-or-order-columns';
const WIDTH = 390;
const FOOT = 122;
const HEAD = 30;
const STEP = (WIDTH - 6) / (LAST + 1);

const { picture } = words;

/** How many are used before the order comes, each column by what that means for the next car. */
export function Columns({ model, shown }: { readonly model: ShelfModel; readonly shown: boolean }) {
  const { keep, found } = model.shelf.value;
  const all = columnsOf(model);
  // Against the highest, since it is their shares that tell; the number in the corner is the sum of the full ones.
  const highest = Math.max(...all.map(({ chance }) => chance));
  const high = (chance: number): number => (chance / highest) * (FOOT - HEAD);
  const said = shown
    ? picture.describe({ keep: printCount(keep), found: printIn100(found) })
    : picture.before;
  return (
    <div class="chart">
      <svg class="shelf" viewBox={`0 0 ${WIDTH} 190`} role="img" aria-label={said}>
        <Hatches id={ID} />
        {all.map(({ name, chance, found: there }, used) => {
          const x = 3 + used * STEP;
          const [middle, tall] = [x + STEP / 2, high(chance)];
          return (
            <g key={used}>
              {shown && (
                <rect
                  class={there ? 'part full' : 'part'}
                  fill={there ? undefined : hatchFill(ID, 'even')}
                  x={(x + 2).toFixed(1)}
                  y={(FOOT - tall).toFixed(1)}
                  width={(STEP - 4).toFixed(1)}
                  height={tall.toFixed(1)}
                />
              )}
              <text x={middle.toFixed(1)} y={FOOT + 18} text-anchor="middle">
                {name}
              </text>
            </g>
          );
        })}
        <path class="shelf-foot" d={`M0 ${FOOT}H${WIDTH}`} />
        <text class="shelf-found" x={WIDTH - 3} y={18} text-anchor="end">
          {shown ? picture.share({ share: printIn100(found) }) : picture.hidden}
        </text>
        <text x={WIDTH / 2} y={FOOT + 38} text-anchor="middle">
          {picture.used}
        </text>
        <rect class="part full" x={2} y={171} width={18} height={14} />
        <text x={26} y={184}>
          {picture.found}
        </text>
        <rect class="part" fill={hatchFill(ID, 'even')} x={210} y={171} width={18} height={14} />
        <text x={234} y={184}>
          {picture.waits}
        </text>
      </svg>
    </div>
  );
}
