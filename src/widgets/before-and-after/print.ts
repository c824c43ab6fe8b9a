/** This simulation's own words for its numbers. */
import { COMPLAINT_C } from '../../car/repair-names.ts';
import { SAME_C, type Taken } from '../../diagnosis/before-after.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds, temperature, temperatureRise } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { TestName } from './brought.ts';
import type { ProofModel } from './model.ts';
import { words } from './words.en.ts';

export const quantityOf = (test: TestName): Quantity => (test === 'stop' ? seconds : pressure);

/** A reading, or that the turbine never stood. */
export const printTaken = ({ value }: Taken, test: TestName, system: UnitSystem): string =>
  value === null ? words.picture.never : printer(system)(value, quantityOf(test));

export function saysOf({ state, pair }: ProofModel, system: UnitSystem): string {
  const { test, after: tempC } = state.value;
  const { by, difference, doubt, apartC, after, right, room } = pair.value;
  const print = printer(system);
  const say = words.says[by === 'right' ? 'proves' : by];
  return say({
    difference: print(Math.abs(difference), quantityOf(test)),
    doubt: print(doubt, quantityOf(test)),
    apart: print(apartC, temperatureRise),
    same: print(SAME_C, temperatureRise),
    temp: print(tempC, temperature),
    hot: print(COMPLAINT_C, temperature),
    after: printTaken(after, test, system),
    right: print(right, quantityOf(test)),
    room: print(room, quantityOf(test)),
  });
}
