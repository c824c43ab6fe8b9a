import { format } from '../quantity/print.ts';
import { roadSpeed } from '../quantity/quantities.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { PARK_BELOW_KMH } from './range-rules.ts';

/** Below which the controller lets the park pawl in, as printed. */
export const parkSpeed = (system: UnitSystem): string => format(PARK_BELOW_KMH, roadSpeed, system);
