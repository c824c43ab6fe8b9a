import { airReading, PRINTED_CEILINGS } from '../car/air-bench.ts';
import { makeCar, oneFault, soundCar } from '../car/index.ts';
import { airHeldBehind, airHoleFlow, BENCH_AIR, holeArea, TESTER_HOLE } from '../engine/index.ts';
import { kPa, mm, percent, type Entries } from './entry.ts';

/** The rig of the course: supply [kPa] and hole [mm]. */
const RIG = { supply: 275, hole: 1.5, wet: true };
const LEAKS = { small: 1, even: 1.5, wide: 2, widest: 3 };

const throughHole = (leak: number): number =>
  100 * airHeldBehind(TESTER_HOLE, BENCH_AIR, (air) => airHoleFlow(holeArea(leak / 1e3), air));
const plain = (leak: number) => percent(throughHole(leak), `held into a hole of ${leak} mm`);

export const airOnTheBench: Entries = {
  'bench-leak-small': mm(LEAKS.small, 'a plain hole for a leak'),
  'bench-leak-even': mm(LEAKS.even, 'a plain hole for a leak, as wide as the tester’s'),
  'bench-leak-wide': mm(LEAKS.wide, 'a plain hole for a leak'),
  'bench-leak-widest': mm(LEAKS.widest, 'a plain hole for a leak'),
  'bench-held-small': plain(LEAKS.small),
  'bench-held-even': plain(LEAKS.even),
  'bench-held-wide': percent(throughHole(LEAKS.wide), 'held into a hole of 2 mm'),
  'bench-held-widest': plain(LEAKS.widest),
  'bench-dry': percent(
    airReading(soundCar, 'forward', { ...RIG, wet: false }).held,
    'held by a sound circuit whose seals are dry',
  ),
  'bench-piston': percent(
    airReading(makeCar({ faults: oneFault('pistonSeal', 60, 'high') }), 'high', RIG).held,
    'held with a cut piston seal in high',
  ),
  'bench-ceiling-low': kPa(PRINTED_CEILINGS.low, 'printed ceiling for air on a clutch, 50 psi'),
  'bench-ceiling-high': kPa(PRINTED_CEILINGS.high, 'printed ceiling for air on a clutch, 80 psi'),
  'bench-front-least': mm(0.102, 'front end play, an example from a manual'),
  'bench-front-most': mm(0.559, 'front end play, an example from a manual'),
  'bench-rear-least': mm(0.127, 'rear end play, an example from a manual'),
  'bench-rear-most': mm(0.635, 'rear end play, an example from a manual'),
  'bench-bushing': mm(0.1016, 'bushing clearance, an example from a manual'),
  'bench-cone': mm(0.33, 'cone of a steel plate, an example from a manual'),
};
