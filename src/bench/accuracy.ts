// npm run accuracy -- [cars] [seed]: how often the planner is right on cars that differ from its model, and what it costs in
// minutes beside a good shop's fixed order on the same cars. Keeps its figures in accuracy.json beside this file.
import { writeFileSync } from 'node:fs';
import {
  ARRIVES,
  chanceFrom,
  decodeTable,
  drawClass,
  isFault,
  makeGenerated,
  minutesFor,
  NAMES,
  plannerOf,
  signsNear,
  stateAfter,
  SURE,
  testOf,
  TESTS,
  type Advice,
  type CarState,
  type GeneratedCar,
  type TakenReading,
  type Test,
} from '../diagnosis/index.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import { training } from '../engine/index.ts';

const [cars = 200, seed = 1] = process.argv.slice(2).map(Number);
const table = decodeTable(keptTable);
const ask = plannerOf(table);
const chance = chanceFrom(seed);
const faults = NAMES.filter(isFault);

/** A good shop's order, from the specification, section 10. */
const ORDER: readonly string[] = [
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
  ...['forward', 'reverse', 'high'].flatMap((circuit) => [
    `clutch.${circuit}.700.hot`,
    `clutch.${circuit}.1500.hot`,
  ]),
  'fluidCup',
  'panFilter',
  'airTest.forward',
  'airTest.reverse',
  'airTest.high',
  'airWhere.forward',
  'airWhere.reverse',
  'airWhere.high',
  'boreVacuum',
  'airTest.transferSeal',
];

interface Run {
  readonly advice: Advice;
  readonly minutes: number;
  readonly readings: number;
}
const sure = ({ faults: [top] }: Advice): boolean => (top?.probability ?? 0) >= SURE;

function follow(
  car: GeneratedCar,
  nextOf: (advice: Advice, step: number) => Test | undefined,
): Run {
  const readings: TakenReading[] = [];
  let state: CarState = ARRIVES;
  let minutes = 0;
  for (let step = 0; ; step += 1) {
    const advice = ask({ readings, state, priors: {} });
    const test = sure(advice) ? undefined : nextOf(advice, step);
    if (test === undefined) return { advice, minutes, readings: readings.length };
    minutes += minutesFor(test, state);
    state = stateAfter(test, state);
    readings.push(car.read(test));
  }
}

const byPlanner = (advice: Advice): Test | undefined => advice.next[0]?.test;
const byOrder = (_advice: Advice, step: number): Test | undefined =>
  ORDER[step] === undefined ? undefined : testOf(ORDER[step]);

const counted = { first: 0, two: 0, sure: 0, unlisted: 0, allFirst: 0 };
const spent = { planner: 0, order: 0 };
const bins = Array.from({ length: 10 }, () => ({ n: 0, right: 0, said: 0 }));
for (let n = 0; n < cars; n += 1) {
  const { of, severity } = drawClass(chance, faults);
  const car = makeGenerated(training, of, severity, {
    chance,
    signs: signsNear(table, of, severity),
  });
  const run = follow(car, byPlanner);
  const [top, second] = run.advice.faults;
  const right = top?.fault === of.name;
  counted.first += right ? 1 : 0;
  counted.two += right || second?.fault === of.name ? 1 : 0;
  counted.sure += sure(run.advice) ? 1 : 0;
  counted.unlisted += top?.fault === 'unlisted' ? 1 : 0;
  const bin = bins[Math.min(9, Math.floor(10 * (top?.probability ?? 0)))];
  if (bin) {
    bin.n += 1;
    bin.right += right ? 1 : 0;
    bin.said += top?.probability ?? 0;
  }
  spent.planner += run.minutes;
  spent.order += follow(car, byOrder).minutes;
  const all = ask({
    readings: TESTS.filter(({ at }) => at.warmth !== 'frost').map((test) => car.read(test)),
    state: ARRIVES,
    priors: {},
  });
  counted.allFirst += all.faults[0]?.fault === of.name ? 1 : 0;
  if ((n + 1) % 50 === 0) console.log(`${n + 1} cars`);
}
const share = (count: number): number => Number((count / cars).toFixed(4));
const error = bins.reduce((sum, { right, said }) => sum + Math.abs(right - said) / cars, 0);
const figures = {
  command: `npm run accuracy -- ${cars} ${seed}`,
  cars,
  seed,
  rightFirst: share(counted.first),
  rightWithinTwo: share(counted.two),
  reached90: share(counted.sure),
  unlistedAccused: share(counted.unlisted),
  rightFirstAllReadings: share(counted.allFirst),
  calibrationError: Number(error.toFixed(4)),
  minutes: Number((spent.planner / cars).toFixed(1)),
  minutesFixedOrder: Number((spent.order / cars).toFixed(1)),
  minutesRatio: Number((spent.planner / spent.order).toFixed(3)),
};
console.log(JSON.stringify(figures, null, 2));
writeFileSync(new URL('./accuracy.json', import.meta.url), `${JSON.stringify(figures, null, 2)}\n`);
