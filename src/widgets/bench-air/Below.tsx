import { airReading } from '../../car/air-bench.ts';
import { AIR_TARGETS } from '../../car/shop-tests.ts';
import { printer } from '../../quantity/print.ts';
import { length, percent, pressure } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import type { BenchAirModel } from './model.ts';
import { carOf } from './units.ts';
import { words as bench } from './words.en.ts';

/** All of a unit at once, when it has been named, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<BenchAirModel>) {
  const print = printer(useUnits());
  const { hole, supply, named } = model.givens;
  const said = named.value !== 'unsaid' && !model.shut.value;
  const car = carOf(model.unit.value);
  const rig = { supply: supply.value, hole: hole.value };
  const { taken } = words;
  return (
    <>
      <BelowTable
        class="bench-air-table"
        head={words.head}
        caption={
          said
            ? words.caption({
                supply: print(rig.supply, pressure),
                hole: print(rig.hole, length),
              })
            : words.later
        }
        columns={[words.place, words.wet, words.dry, words.where]}
        rows={
          said
            ? AIR_TARGETS.map((place) => {
                const [wet, dry] = [true, false].map((isWet) =>
                  airReading(car, place, { ...rig, wet: isWet }),
                );
                return {
                  key: place,
                  cells: [
                    bench.places[place],
                    print(wet?.held ?? 0, percent),
                    print(dry?.held ?? 0, percent),
                    wet?.most ? bench.where[wet.most] : words.tight,
                  ],
                };
              })
            : []
        }
      />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.rig}
        </p>
        <p>{taken.wet}</p>
        <p>{taken.sound}</p>
        <p>{taken.sizes}</p>
      </div>
    </>
  );
}
