// node src/bench/contradictions.ts [cars] [seed]: on how many honest cars two readings are said to contradict each other, with
// one fault and with two, and how many planted slips of the pen it finds.
import {
  chanceFrom,
  contradictions,
  decodeTable,
  drawClass,
  groundsOf,
  hypothesesOf,
  isFault,
  isNumeric,
  illnessOf,
  makeGenerated,
  NAMES,
  offScale,
  ratherInOther,
  signsNear,
  TESTS,
  withFault,
  type GeneratedCar,
  type TakenReading,
} from '../diagnosis/index.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import { training } from '../engine/index.ts';

const [cars = 200, seed = 1] = process.argv.slice(2).map(Number);
const table = decodeTable(keptTable);
const hypotheses = hypothesesOf(table);
const grounds = groundsOf(hypotheses);
const chance = chanceFrom(seed);
const faults = NAMES.filter(isFault);
const offered = TESTS.filter(({ at }) => at.warmth !== 'frost');
const SHEET = 12;
const BARS = [1e-3, 1e-4, 1e-5, 1e-6] as const;

function shuffled<One>(of: readonly One[]): readonly One[] {
  const all = [...of];
  for (let i = all.length - 1; i > 0; i -= 1) {
    const k = Math.floor(chance() * (i + 1));
    const [a, b] = [all[i], all[k]];
    if (a !== undefined && b !== undefined) [all[i], all[k]] = [b, a];
  }
  return all;
}

function car(two: boolean): GeneratedCar {
  const { of, severity } = drawClass(chance, two ? faults : [...faults, 'healthy']);
  const other = drawClass(chance, faults);
  const illness = illnessOf(of, severity, signsNear(table, of, severity));
  return makeGenerated(
    training,
    two
      ? {
          ...illness,
          spoil: (sound) => illness.spoil(withFault(sound, other.of, other.severity)),
        }
      : illness,
    chance,
  );
}

const smallest = (readings: readonly TakenReading[]): number =>
  contradictions(hypotheses, readings, Math.max(...BARS)).reduce(
    (least, { share }) => Math.min(least, share),
    1,
  );
const counts = (shares: readonly number[]): string =>
  BARS.map((bar) => `${shares.filter((share) => share < bar).length} under ${bar}`).join(', ');

const few: number[] = [];
const all: number[] = [];
const both: number[] = [];
const slipped: number[] = [];
let asked = 0;
let inUnit = 0;
let caught = 0;
let pressures = 0;
const started = performance.now();
let spent = 0;
for (let n = 0; n < cars; n += 1) {
  const one = car(false);
  const order = shuffled(offered);
  const sheet = order.slice(0, SHEET).map((test) => one(test));
  const before = performance.now();
  few.push(smallest(sheet));
  spent += performance.now() - before;
  if (n % 10 === 0) all.push(smallest(offered.map((test) => one(test))));
  const two = car(true);
  both.push(smallest(order.slice(0, SHEET).map((test) => two(test))));
  // A slip of the pen: one number of the sheet comes from anywhere in its range.
  const place = sheet.findIndex(({ test, value }) => isNumeric(test) && value !== null);
  const test = sheet[place]?.test;
  if (test !== undefined && isNumeric(test)) {
    const [from, to] = test.span;
    const value = offScale(test, from + chance() * (to - from));
    slipped.push(smallest(sheet.map((reading, i) => (i === place ? { test, value } : reading))));
  }
  for (const { test: of, value } of sheet) {
    if (!isNumeric(of) || typeof value !== 'number') continue;
    if (of.kind !== 'linePressure' && of.kind !== 'clutchPressure') continue;
    pressures += 2;
    const psi = 6.894757;
    // Read in its own unit, and typed with the page in the other one.
    if (ratherInOther(grounds, of, value, value * psi)) asked += 1;
    if (ratherInOther(grounds, of, value, value / psi)) asked += 1;
    inUnit += 2;
    if (ratherInOther(grounds, of, value / psi, value)) caught += 1;
    if (ratherInOther(grounds, of, value * psi <= 3000 ? value * psi : undefined, value))
      caught += 1;
  }
}
console.log(`${cars} cars, seed ${seed}, ${((performance.now() - started) / 1000).toFixed(0)} s`);
console.log(
  `one fault or none, ${SHEET} readings: ${counts(few)}; ${(spent / cars).toFixed(0)} ms a sheet`,
);
console.log(
  `one fault or none, all ${offered.length} readings, ${all.length} cars: ${counts(all)}`,
);
console.log(`two faults, ${SHEET} readings: ${counts(both)}`);
console.log(`one number of ${SHEET} from anywhere (${slipped.length}): ${counts(slipped)}`);
console.log(
  `pressures in the right unit that are asked about: ${asked} of ${pressures}; in the wrong unit: ${caught} of ${inUnit}`,
);
