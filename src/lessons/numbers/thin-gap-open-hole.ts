import { letsGoAtC, makeCar, readingOf, type Demand } from '../../car/index.ts';
import { faultKinds, gapFlow, holeArea, holeFlow, training } from '../../engine/index.ts';
import { flow, length, percent, temperature, times } from '../../quantity/quantities.ts';
import {
  clutchPressure,
  crack,
  fluidState,
  kiloPascals,
  needed,
  type EngineNumbers,
} from './entry.ts';

/** The crack of the lessons: the transfer seal's own width and land, one pressure behind it. */
const behind = 300e3;
const seal = (mm: number) => ({ ...training.leaks.forward.transferSeal, height: mm / 1e3 });
const through = (mm: number, tempC: number) => gapFlow(seal(mm), behind, fluidState(tempC));
const hole = (tempC: number) => {
  const { density, kinematic } = fluidState(tempC);
  return holeFlow(holeArea(0.6e-3), behind, density, kinematic);
};
const leak = (mm: number, tempC: number) => ({
  value: through(mm, tempC).flow * 60000,
  quantity: flow,
  what: `leak of a ${mm} mm crack at ${tempC} °C and 300 kPa`,
});
const share = (mm: number, tempC: number) => ({
  value: through(mm, tempC).viscousShare * 100,
  quantity: percent,
  what: `viscous share in a ${mm} mm crack at ${tempC} °C`,
});
const growth = (mm: number) => ({
  value: through(mm, 100).flow / through(mm, 20).flow,
  quantity: times,
  what: `leak of a ${mm} mm crack at 100 °C over 20 °C`,
});
const pressureAt = (mm: number, tempC: number) =>
  kiloPascals(
    clutchPressure({ tempC, faults: crack(mm) }),
    `clutch pressure at idle, ${mm} mm crack, ${tempC} °C`,
  );
/** Where the pressure had, on the commands of idle, crosses a demand; the lessons use only cracks that cross. */
const crossing = (mm: number, demand: Demand) => ({
  value: letsGoAtC(makeCar({ crackMm: mm }), demand),
  quantity: temperature,
  what: `up to where a ${mm} mm crack holds the ${demand} demand, idle commands`,
});
const mm = (value: number, what: string) => ({ value, quantity: length, what });

export const thinGapNumbers: EngineNumbers = {
  'crack-thin': mm(0.05, 'a thin crack'),
  'crack-two-hairs': mm(0.16, 'a crack of about two hairs'),
  'crack-default': mm(0.25, 'the crack of the lessons'),
  'crack-wide': mm(0.4, 'the widest crack of the training transmission'),
  'crack-worst': mm(faultKinds.transferSeal.worst, 'the widest crack of the training transmission'),
  'behind-pressure': kiloPascals(behind, 'pressure behind the crack in the lesson'),
  'leak-thin-20': leak(0.05, 20),
  'leak-thin-100': leak(0.05, 100),
  'leak-wide-20': leak(0.4, 20),
  'leak-wide-100': leak(0.4, 100),
  'leak-default-20': leak(0.25, 20),
  'leak-default-100': leak(0.25, 100),
  'growth-thin': growth(0.05),
  'growth-two-hairs': growth(0.16),
  'growth-default': growth(0.25),
  'growth-wide': growth(0.4),
  'growth-hole': {
    value: hole(100) / hole(20),
    quantity: times,
    what: 'leak of a 0.6 mm drilled hole at 100 °C over 20 °C',
  },
  'share-thin-20': share(0.05, 20),
  'share-thin-100': share(0.05, 100),
  'share-wide-20': share(0.4, 20),
  'share-wide-100': share(0.4, 100),
  'clutch-healthy-20': pressureAt(0, 20),
  'clutch-healthy-100': pressureAt(0, 100),
  'clutch-default-20': pressureAt(0.25, 20),
  'clutch-default-60': pressureAt(0.25, 60),
  'clutch-default-80': pressureAt(0.25, 80),
  'clutch-default-100': pressureAt(0.25, 100),
  'clutch-two-hairs-20': pressureAt(0.16, 20),
  'clutch-two-hairs-100': pressureAt(0.16, 100),
  'clutch-wide-20': pressureAt(0.4, 20),
  'clutch-high-100': kiloPascals(
    clutchPressure({ tempC: 100, faults: crack(0.25), circuit: 'high' }),
    'high clutch at idle with a 0.25 mm transfer seal crack, 100 °C',
  ),
  'line-default-100': kiloPascals(
    1e3 * readingOf(makeCar({ crackMm: 0.25 }), { tempC: 100 }).lineKpa,
    'line pressure at idle in Drive with a 0.25 mm crack, 100 °C',
  ),
  'needed-idle': needed('standing', 'clutch pressure needed to hold at idle in gear'),
  'needed-take-off': needed('firm', 'clutch pressure needed at 1500 rpm, standing'),
  'crossing-default-take-off': crossing(0.25, 'firm'),
  'crossing-default-gentle': crossing(0.25, 'gentle'),
  'crossing-default-idle': crossing(0.25, 'standing'),
  'crossing-two-hairs-take-off': crossing(0.16, 'firm'),
};
