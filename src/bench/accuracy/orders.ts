import { TESTS, testOf, type Chance, type Test } from '../../diagnosis/index.ts';

const circuits = ['forward', 'reverse', 'high'];
const taps = (warmth: string): readonly string[] =>
  circuits.flatMap((circuit) => [
    `clutch.${circuit}.700.${warmth}`,
    `clutch.${circuit}.1500.${warmth}`,
  ]);

/** A good shop's order, from the planner's specification, section 10. */
export const FIXED: readonly Test[] = [
  'codes',
  'engineOffTurbine',
  'fluidLevel',
  'fluidLook',
  'cable',
  'stopTime.drive.cold',
  'stopTime.reverse.cold',
  'line.park.700.cold',
  'line.drive.1500.cold',
  'line.drive.3000.cold',
  'gaugeFlutter.park.3000.cold',
  'stopTime.drive.hot',
  'stopTime.reverse.hot',
  'takeoffSlip.drive.hot',
  'takeoffSlip.reverse.hot',
  'line.park.700.hot',
  'line.drive.700.hot',
  'line.reverse.700.hot',
  'line.drive.1500.hot',
  'coolerFlow.park.700.hot',
  'coolerFlow.park.1500.hot',
  ...taps('hot'),
  'fluidCup',
  'panFilter',
  ...circuits.map((circuit) => `airTest.${circuit}`),
  ...circuits.map((circuit) => `airWhere.${circuit}`),
  'boreVacuum',
  'airTest.transferSeal',
  ...taps('cold'),
].map(testOf);

/** Everything but frost, which no shop can order. */
export const ALL: readonly Test[] = TESTS.filter(({ at }) => at.warmth !== 'frost');

/** All of them, in an order of chance (Fisher and Yates). */
export function shuffled(chance: Chance): readonly Test[] {
  const order = [...ALL];
  for (let i = order.length - 1; i > 0; i -= 1) {
    const j = Math.floor(chance() * (i + 1));
    const [one, other] = [order[i], order[j]];
    if (one && other) [order[i], order[j]] = [other, one];
  }
  return order;
}
