import { PARK_BELOW_KMH } from '../../car/range-rules.ts';
import { format } from '../../quantity/print.ts';
import { roadSpeed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';

/** Below which the controller lets the park pawl in, as it stands at the arrow of the diagram. */
export const parkSpeedWords = (system: UnitSystem): string =>
  format(PARK_BELOW_KMH, roadSpeed, system);
