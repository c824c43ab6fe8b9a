/** Cars and times of this simulation, as printed. */
import type { LiveCar } from '../../car/live-cars.ts';
import { recordingOf } from '../../car/live-cars.ts';
import { recipes } from '../../car/recordings.ts';
import { format } from '../../quantity/print.ts';
import { length, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { words } from './words.en.ts';

export function carName(car: LiveCar, system: UnitSystem): string {
  const { tempC, crackMm = 0 } = recipes[recordingOf(car)];
  return words.cars[car]({
    temp: format(tempC, temperature, system),
    crack: format(crackMm, length, system),
  });
}
