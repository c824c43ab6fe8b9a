/** This simulation's own words for what the car reads. */
import {
  airAfter,
  driveAfter,
  pullsIn,
  STEPS,
  type DriveAfter,
  type Step,
} from '../../car/back-together.ts';
import { HOT_C } from '../../car/cold-and-hot.ts';
import { REFERENCE_CRACK_MM } from '../../car/car.ts';
import { listOf } from '../../quantity/lists.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { count, length, percent, pressure, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { JobCardModel } from './model.ts';
import { words } from './words.en.ts';

const { says, picture } = words;
export const OF = STEPS.length;
export const printCount = (value: number): string => printer('si')(value, count);

export const airWords = (held: number, system: UnitSystem): string => {
  const print = printer(system);
  return picture.holds({ held: print(held, percent), sister: print(airAfter([]), percent) });
};
export const stickWords = ({ stickMm }: DriveAfter, system: UnitSystem): string =>
  stickMm > 0 ? picture.over({ mm: printer(system)(stickMm, dimension) }) : picture.middle;

/** The three cars of the prediction. */
export const THREE = { a: ['balls'], b: ['bridge'], c: ['lip'] } as const;
export function three(system: UnitSystem) {
  const print = printer(system);
  const [a, b, c] = [driveAfter(THREE.a), driveAfter(THREE.b), driveAfter(THREE.c)];
  return {
    ball: print(a.cold.forward.kPa, pressure),
    bridgeCold: print(b.cold.forward.kPa, pressure),
    bridgeHot: print(b.hot.forward.kPa, pressure),
    lipCold: print(c.cold.forward.kPa, pressure),
    lipHot: print(c.hot.forward.kPa, pressure),
    right: print(REFERENCE_CRACK_MM, length),
    hot: print(HOT_C, temperature),
  };
}

/** How a line of the card stands. */
export const stateOf = ({ done, skipped }: JobCardModel, step: Step) =>
  done.value.includes(step) ? 'signed' : skipped.value.includes(step) ? 'hidden' : 'open';

export const stepsOf = (steps: readonly Step[]): string =>
  listOf(steps.map((step) => words.steps[step]));

function answered({ answer }: JobCardModel): string {
  const said = answer.value;
  if (said === null) return '';
  if ('refused' in said) {
    const { refused, missing } = said;
    const why: Partial<Record<string, string>> = words.refuse[refused];
    const told = { step: words.steps[refused], missing: words.steps[missing] };
    return `${says.refused(told)} ${why[missing] ?? ''}`;
  }
  return says.undone({ step: words.steps[said.backTo], lines: printCount(said.lines) });
}

function drove({ driven, skipped }: JobCardModel): string {
  const read = driven.value;
  if (read === null) return '';
  if (!pullsIn(read.cold)) return says.slips;
  if (!pullsIn(read.hot)) return says.slipsHot;
  const silent = skipped.value.length > 0 && read.stickMm <= 0;
  return silent ? `${says.pulls} ${says.silent}` : says.pulls;
}

export function saysOf(model: JobCardModel): string {
  const { done, skipped, driven } = model;
  const signed = done.value.length;
  const said = answered(model);
  if (said !== '') return said;
  if (signed === 0) return says.empty;
  return [
    ...(driven.value === null
      ? [says.signed({ signed: printCount(signed), of: printCount(OF) })]
      : []),
    ...(skipped.value.length > 0 ? [says.skipped({ steps: stepsOf(skipped.value) })] : []),
    drove(model),
  ]
    .filter((one) => one !== '')
    .join(' ');
}
