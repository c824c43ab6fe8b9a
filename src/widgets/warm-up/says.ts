import { words as names } from '../../car/words.en.ts';
import { plural } from '../../quantity/lists.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { DEMAND_OF } from '../../simulation/required/control.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { TIMES, type WarmUpModel } from './model.ts';
import { words } from './words.en.ts';

const { says: said } = words;

/** "17 minutes", as somebody says it. */
export const spoken = (minute: number): string =>
  minute < 0.5 ? words.noMinute : plural(minute, words.minutes);

/** What is asked of the clutch, as the head of a sentence. */
export const demandOf = ({ givens }: WarmUpModel): string =>
  names.demands[DEMAND_OF[givens.required.value]];

/** The drive up to a minute: of one kind, or mixed. */
function drivenAs({ stretches }: WarmUpModel, minute: number): keyof typeof said.after {
  const kinds = new Set(
    stretches.value.filter(({ from }) => from < minute).map(({ kind }) => kind),
  );
  const [only] = kinds;
  return kinds.size === 1 && only ? only : 'mixed';
}

/** When it shows, in one sentence. */
function verdict(model: WarmUpModel, system: UnitSystem): string {
  const { shows, letsGo, end } = model;
  const print = printer(system);
  const found = shows.value;
  const lets = letsGo.value;
  if (found.when === 'never') return said.never;
  if (lets.kind !== 'at') return said.always;
  const temp = print(lets.tempC, temperature);
  switch (found.when) {
    case 'at-once':
      return said.atOnce({ temp });
    case 'at':
      return said.after[drivenAs(model, found.minute)]({ minutes: spoken(found.minute), temp });
    case 'not-on-this-drive':
      return said.notOnThisDrive({
        last: print(end.value.tempC, temperature),
        minutes: spoken(end.value.minute),
        demand: demandOf(model),
        temp,
      });
  }
}

/** The sentence under the picture, with a warning where a plan would cook the fluid. */
export function says(model: WarmUpModel, system: UnitSystem): string {
  const sentence = verdict(model, system);
  const first = model.temps.value.findIndex((temp) => temp !== null && temp > TEMP.max);
  if (first < 0) return sentence;
  const tooHot = said.tooHot({
    minutes: spoken(TIMES[first] ?? 0),
    most: printer(system)(TEMP.max, temperature),
  });
  return [sentence, tooHot].join(' ');
}
