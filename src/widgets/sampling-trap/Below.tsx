import { fallsIn, LIVE_CARS, PLUG, SHUDDER, STANDS_RPM } from '../../car/live-cars.ts';
import { printer } from '../../quantity/print.ts';
import { seconds, speed } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import type { TrapModel } from './model.ts';
import { carName } from './print.ts';
import { printRate } from './sim.ts';

/** Every car beside the rows, and what the picture takes for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<TrapModel>) {
  const system = useUnits();
  const print = printer(system);
  const fits = new Set(model.fits.value.map(({ car }) => car));
  const { table, taken } = words;
  return (
    <>
      <BelowTable
        class="trap-cars"
        head={table.head}
        caption={table.caption}
        columns={[table.car, table.stands, table.rows]}
        rows={LIVE_CARS.map((car) => {
          const stands = model.standsAfter(car);
          return {
            key: car,
            cells: [
              carName(car, system),
              stands === null ? table.never : print(stands, seconds),
              fits.has(car) ? <strong key="yes">{table.yes}</strong> : table.no,
            ],
          };
        })}
      />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.ramp({ falls: print(fallsIn('hot'), seconds) })}
        </p>
        <p>{taken.queue}</p>
        <p>{taken.stands({ speed: print(STANDS_RPM, speed) })}</p>
        <p>
          {taken.hand({
            lasts: print(PLUG.lasts, seconds),
            swings: printRate(SHUDDER.swings),
            speed: print(SHUDDER.rpm, speed),
          })}
        </p>
      </div>
    </>
  );
}
