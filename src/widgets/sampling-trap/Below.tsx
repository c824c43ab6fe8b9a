import { fallsIn, LIVE_CARS, PLUG, SHUDDER, STANDS_RPM } from '../../car/live-cars.ts';
import { printer } from '../../quantity/print.ts';
import { seconds, speed } from '../../quantity/quantities.ts';
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
      <figure class="trap-cars">
        <figcaption>
          <strong>{table.head}</strong> {table.caption}
        </figcaption>
        <table>
          <thead>
            <tr>
              <th scope="col">{table.car}</th>
              <th scope="col">{table.stands}</th>
              <th scope="col">{table.rows}</th>
            </tr>
          </thead>
          <tbody>
            {LIVE_CARS.map((car) => {
              const stands = model.standsAfter(car);
              return (
                <tr key={car}>
                  <th scope="row">{carName(car, system)}</th>
                  <td>{stands === null ? table.never : print(stands, seconds)}</td>
                  <td>{fits.has(car) ? <strong>{table.yes}</strong> : table.no}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </figure>
      <div class="trap-taken">
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
