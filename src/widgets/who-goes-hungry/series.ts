import type { Series } from '../../charts/line-data.ts';
import { COLD_C } from '../../car/cold-and-hot.ts';
import { format } from '../../quantity/print.ts';
import { speed, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { SPEED, type PumpModel } from './model.ts';
import { words } from './words.en.ts';

/** The axis that both charts share. */
export const X_AXIS = { label: words.line.x, quantity: speed, min: SPEED.min, max: SPEED.max };

/** Cold dashed beside the temperature chosen; one line alone where that is the cold one itself. */
export function seriesOf(
  { givens, coldSweep, sweep }: PumpModel,
  which: 'line' | 'leftOver',
  { hide, system }: { readonly hide: boolean; readonly system: UnitSystem },
): readonly Series[] {
  const temp = givens.temp.value;
  const name = (tempC: number): string => format(tempC, temperature, system);
  const cold: Series = { id: 'cold', label: name(COLD_C), kind: 'cold', y: coldSweep.value[which] };
  if (hide || temp === COLD_C) return [cold];
  // Colder than the cold line is cold too, but only one line can be the dashed one.
  const kind = temp > COLD_C ? 'hot' : 'plain';
  return [cold, { id: 'now', label: name(temp), kind, y: sweep.value[which] }];
}
