/** The table's second half: sizes and workings of parts. The rules are those of quantities.ts. */
import {
  GRAM_PER_POUND,
  LITRE_PER_US_GALLON,
  MM_PER_INCH,
  NEWTON_METRE_PER_POUND_FOOT,
  NEWTON_PER_POUND_FORCE,
} from './factors.ts';
import { both, fixed, METER, ROUND, shared, unit, WHOLE } from './units.ts';

const FOOT_PER_METRE = 1000 / MM_PER_INCH / 12;
export const force = both(
  'force',
  unit('N', 1, WHOLE),
  unit('lbf', 1 / NEWTON_PER_POUND_FORCE, WHOLE),
);
/** Radii, lands and other sizes of a part. */
export const dimension = both('size', unit('mm', 1, ROUND), unit('in', 1 / MM_PER_INCH, fixed(2)));
export const area = both('area', unit('cm²', 1, ROUND), unit('in²', 1 / 6.4516, METER));
export const volume = both('volume', unit('cm³', 1, ROUND), unit('in³', 1 / 16.387064, METER));
/** Fluid as it is filled and drained. */
export const fluidVolume = both(
  'amount of fluid',
  unit('L', 1, fixed(1)),
  unit('qt', 4 / LITRE_PER_US_GALLON, fixed(1)),
);
export const density = shared('density', unit('kg/m³', 1, WHOLE));
export const mass = both('mass', unit('kg', 1, ROUND), unit('lb', 1000 / GRAM_PER_POUND, ROUND));
export const inertia = both(
  'moment of inertia',
  unit('kg·m²', 1, fixed(3)),
  unit('lb·ft²', (FOOT_PER_METRE ** 2 * 1000) / GRAM_PER_POUND, fixed(2)),
);
/** Angular momentum: inertia times speed. Divided by a torque it is a time, in either system. */
export const spin = both(
  'spin',
  unit('N·m·s', 1, METER),
  unit('lbf·ft·s', 1 / NEWTON_METRE_PER_POUND_FOOT, METER),
);
/** What one newton of squeeze is worth in torque: friction × faces × radius. */
export const leverArm = both(
  'lever arm',
  unit('m', 1, fixed(4)),
  unit('ft', FOOT_PER_METRE, fixed(3)),
);
/** A worked example's torque, to the digits at which a book and the model could differ. */
export const workedTorque = both(
  'torque',
  unit('N·m', 1, fixed(2)),
  unit('lbf·ft', 1 / NEWTON_METRE_PER_POUND_FOOT, fixed(2)),
);
export const converterCapacity = both(
  'converter capacity',
  unit('rpm/√(N·m)', 1, WHOLE),
  unit('rpm/√(lbf·ft)', Math.sqrt(NEWTON_METRE_PER_POUND_FOOT), WHOLE),
);
export const milliseconds = shared('time in milliseconds', unit('ms', 1, WHOLE));
export const friction = shared('friction coefficient', unit('', 1, fixed(2)));
/** A ratio of speeds: two decimals where they are there, as a parts book prints them. */
export const ratio = shared('ratio', unit('', 1, [[0, 2, 1]]));
/** A whole multiple of what is usual: 30 ×. */
export const multiple = shared('multiple', unit('×', 1, WHOLE));
/** How often a second something is read or swings: 2, 6.7, 16.7. */
export const rate = shared('number a second', unit('', 1, [[0, 1, 0]]));
