import { afterSelection, engage } from './engage.ts';
import type { Repair } from './repair-names.ts';
import { repaired } from './repairs.ts';

/** Drive selected with the foot on the brake, until the turbine stands [s]; null if it never does. */
export const standsAfter = (repair: Repair, tempC: number): number | null =>
  afterSelection(engage(repaired(repair), { tempC }), 'turbine stopped');
