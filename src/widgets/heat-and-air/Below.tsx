import { AIR_TARGETS, benchOf, leaksAir, soundBench } from '../../car/shop-tests.ts';
import { BENCH_AIR } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure } from '../../quantity/quantities.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import type { HeatAndAirModel } from './model.ts';

/** Every place that can be put under air, beside a healthy one. Shown once the answer is out, and fetched then. */
export function Below({ model }: PictureProps<HeatAndAirModel>) {
  const print = printer(useUnits());
  const held = benchOf(model.car.value);
  return (
    <figure class="air-table">
      <figcaption>
        <strong>{words.head}</strong>{' '}
        {words.how({ supply: print((BENCH_AIR.supply - BENCH_AIR.ambient) / 1e3, pressure) })}
      </figcaption>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.place}</th>
            <th scope="col">{words.here}</th>
            <th scope="col">{words.healthy}</th>
          </tr>
        </thead>
        <tbody>
          {AIR_TARGETS.map((target) => {
            const leaks = leaksAir(held, target);
            return (
              <tr key={target}>
                <th scope="row">{words.places[target]}</th>
                <td class={leaks ? 'air-leaks' : undefined}>
                  {print(held[target], percent)} {leaks ? words.leaks : words.ok}
                </td>
                <td>{print(soundBench[target], percent)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </figure>
  );
}
