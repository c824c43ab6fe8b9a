import { coolant, driveHeat, LONGEST_DRIVE, trainingLump, warmedTo } from '../../engine/index.ts';
import { listOf } from '../../quantity/lists.ts';
import { printer } from '../../quantity/print.ts';
import { power, temperature, temperatureRise } from '../../quantity/quantities.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { KINDS, type WarmUpModel } from './model.ts';
import { heatHeld } from '../../quantity/heat-held.ts';
import { words } from './below-words.en.ts';
import { words as common } from './words.en.ts';

/** By how much two temperatures are apart where a heat flow is told; by a single degree it would print as nothing [°C]. */
const SPAN = 50;

/** Where a kind of driving has ended after four hours, which is as good as for ever [°C]. */
const endOf = (kind: (typeof KINDS)[number], outsideC: number): number =>
  warmedTo(trainingLump, {
    fluidC: outsideC,
    coolantC: outsideC,
    ambientC: outsideC,
    heat: driveHeat[kind],
    time: LONGEST_DRIVE,
  }).fluidC;

/** Where each kind of driving would end if it went on for ever, in this weather. */
export function Below({ model }: PictureProps<WarmUpModel>) {
  const print = printer(useUnits());
  const outside = model.givens.outside.value;
  const each = KINDS.map((kind) =>
    words.each({ kind: common.kinds[kind], temp: print(endOf(kind, outside), temperature) }),
  );
  const watts = (value: number): string => print(value / 1e3, power);
  return (
    <div class="warm-ends">
      <p>
        {words.lead({ outside: print(outside, temperature) })} {listOf(each)}. {words.rest}
      </p>
      <p class="muted">
        {words.invented({
          capacity: print(trainingLump.capacity / 1e3, heatHeld),
          degree: print(1, temperatureRise),
          span: print(SPAN, temperatureRise),
          loss: watts(SPAN * trainingLump.loss),
          exchange: watts(SPAN * trainingLump.exchange),
          coolant: print(coolant.heldC, temperature),
          idling: watts(driveHeat.idling),
          gentle: watts(driveHeat.gentle),
          pulling: watts(driveHeat.pulling),
        })}{' '}
        {words.command}
      </p>
    </div>
  );
}
