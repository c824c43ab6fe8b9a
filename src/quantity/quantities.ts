/**
 * The table of quantities, units and digits: what gauges, testers and data sheets show. Sizes and workings of parts are in
 * part-quantities.ts; apart, because most pages print none of them.
 *
 * Digits are those of the instrument a shop reads the quantity from, and each unit has one rule. So the same value prints
 * alike wherever it stands: in prose, in a question, under a slider, in a table. A quantity that would need two rules is two
 * quantities. Viscosity, density and rpm read the same in both systems, as the trade's data sheets and testers print them.
 */
import { words } from './words.en.ts';
import {
  GRAM_PER_POUND,
  KILOWATT_PER_HORSEPOWER,
  KM_PER_MILE,
  KPA_PER_PSI,
  LITRE_PER_US_GALLON,
  MM_PER_INCH,
  NEWTON_METRE_PER_POUND_FOOT,
} from './factors.ts';
import { both, DIAL, DYNO, fixed, METER, ROUND, shared, unit, WHOLE } from './units.ts';

export const pressure = both('pressure', unit('kPa', 1, WHOLE), unit('psi', 1 / KPA_PER_PSI, DIAL));
export const temperature = both('temperature', unit('°C', 1, WHOLE), unit('°F', 1.8, WHOLE, 32));
/** A difference of temperatures: no 32 to add. */
export const temperatureRise = both(
  'temperature difference',
  unit('°C', 1, DIAL),
  unit('°F', 1.8, DIAL),
);
/** A gallon is nearly four litres, so gpm carries a decimal more under one: budgets still add up. */
export const flow = both(
  'flow',
  unit('L/min', 1, [
    [0, 3],
    [0.1, 2],
    [10, 1],
  ]),
  unit('gpm', 1 / LITRE_PER_US_GALLON, [
    [0, 3],
    [1, 2],
    [10, 1],
  ]),
);
export const torque = both(
  'torque',
  unit('N·m', 1, DIAL),
  unit('lbf·ft', 1 / NEWTON_METRE_PER_POUND_FOOT, DIAL),
);
/** Gaps, cracks and hole diameters. A feeler gauge or a pin gauge reads whole thousandths; thinner ones come in tenths. */
export const length = both(
  'width',
  unit('mm', 1, [
    [0, 3, 2],
    [0.1, 2],
  ]),
  unit(words.thousandths, 1000 / MM_PER_INCH, [
    [0, 1],
    [3, 0],
  ]),
);
export const roadSpeed = both(
  'road speed',
  unit('km/h', 1, ROUND),
  unit('mph', 1 / KM_PER_MILE, ROUND),
);
export const power = both(
  'power',
  unit('kW', 1, DYNO),
  unit('hp', 1 / KILOWATT_PER_HORSEPOWER, DYNO),
);
export const heat = both(
  'heat',
  unit('J', 1, WHOLE),
  unit('ft·lbf', 1 / NEWTON_METRE_PER_POUND_FOOT, WHOLE),
);
export const airFlow = both(
  'air flow',
  unit('g/s', 1, fixed(1)),
  unit('lb/min', 60 / GRAM_PER_POUND, fixed(2)),
);
export const speed = shared('turning speed', unit('rpm', 1, WHOLE));
export const seconds = shared('time', unit('s', 1, fixed(2)));
export const minutes = shared('time in minutes', unit('min', 1, WHOLE));
export const percent = shared(
  'share',
  unit('%', 1, [
    [0, 1, 0],
    [1, 0],
  ]),
);
export const kinematicViscosity = shared('kinematic viscosity', unit('cSt', 1, METER));
export const dynamicViscosity = shared('dynamic viscosity', unit('mPa·s', 1, METER));
/** How many times one thing is another: 1.03, 3.2, 11.6. Three figures at most; small ones tell growth from none. */
export const times = shared(
  'number of times',
  unit('', 1, [
    [0, 2],
    [2, 1],
    [100, 0],
  ]),
);
/** Things counted, and numbers without a unit that are printed whole: a viscosity index, a Reynolds number. */
export const count = shared('number', unit('', 1, WHOLE));
