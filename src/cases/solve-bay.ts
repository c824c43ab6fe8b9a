/** Works out, when the page is built, what each test can say on each suspect, and what it says on the numbered cars. */
import { hypothesesOf, type Hypothesis } from '../diagnosis/cells.ts';
import { aloneOn } from '../diagnosis/grounds.ts';
import { ANY_VALUE, NAMES, type FaultClass } from '../diagnosis/hypotheses.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import { normalBelow } from '../diagnosis/normal.ts';
import { CODE_SETS } from '../diagnosis/outcome-tables.ts';
import { chancesFor, GROSS, prior, type Weighed } from '../diagnosis/posterior.ts';
import { decodeTable } from '../diagnosis/table-code.ts';
import { isNumeric, type NumericTest } from '../diagnosis/tests.ts';
import { BAY_CARS, type BayCar } from './bay-cars.ts';
import { printSuspects } from './bay-list.ts';
import { BAY_TESTS, type BayTest } from './bay-tests.ts';

/** Chance that a reading lies under each cut, where any value may come. A clock that was stopped is half of it. */
function anyUnder({ kind, span: [from, to] }: NumericTest, cut: number): number {
  const part = Math.min(1, Math.max(0, (cut - from) / (to - from)));
  return kind === 'stopTime' ? part / 2 : part;
}

/** Between the cuts, as a reading of a car of which nothing has been read yet. */
function inNumbers({ hypothesis, broken }: Weighed, test: NumericTest, cuts: readonly number[]) {
  const { mean, variance } = aloneOn(hypothesis, test);
  const eps = broken ? ANY_VALUE * broken.from : GROSS;
  const under = cuts.map(
    (cut) =>
      (1 - eps) * normalBelow((cut - mean) / Math.sqrt(variance)) + eps * anyUnder(test, cut),
  );
  return [...under, 1].map((p, i) => p - (under[i - 1] ?? 0));
}

/** Which of first gear's code and Reverse's is stored: neither, first, Reverse, both. */
const inCodes = (sets: readonly number[]): readonly number[] =>
  [0, 1, 2, 3].map((which) =>
    CODE_SETS.reduce(
      (sum, [first, reverse], i) =>
        (first ? 1 : 0) + (reverse ? 2 : 0) === which ? sum + (sets[i] ?? 0) : sum,
      0,
    ),
  );

function chancesOn(cell: Weighed, { key, test, cuts = [] }: BayTest): readonly number[] {
  if (isNumeric(test)) return inNumbers(cell, test, cuts);
  const chances = chancesFor(cell, test);
  return key === 'codes' ? inCodes(chances) : chances;
}

/** The customer named Drive, so a fault of one clutch sits there. */
const inDrive = ({ circuit }: FaultClass): boolean =>
  circuit === undefined || circuit === 'forward';
const twentieths = ({ severity }: Hypothesis): boolean => Math.round(severity * 1000) % 50 === 0;
const likeliest = (chances: readonly number[]): number => chances.indexOf(Math.max(...chances));

export function solveBay(): string {
  const cells = prior(hypothesesOf(decodeTable(keptTable))).filter(({ hypothesis: { of } }) =>
    inDrive(of),
  );
  const cellOf = ({ name, severity }: Pick<BayCar, 'name' | 'severity'>): Weighed => {
    const found = cells.find(
      ({ hypothesis: { of, severity: at } }) => of.name === name && Math.abs(at - severity) < 1e-6,
    );
    if (found === undefined) throw new Error(`Nobody weighs ${name} at ${severity}.`);
    return found;
  };
  const sound = cellOf({ name: 'healthy', severity: 1 });
  const readOn = (car: BayCar): readonly number[] =>
    BAY_TESTS.map(
      (one) => car.byHand?.[one.key] ?? likeliest(chancesOn(car.byHand ? sound : cellOf(car), one)),
    );
  return printSuspects(
    BAY_CARS.map(readOn),
    cells
      .filter(({ hypothesis, broken }) => broken || twentieths(hypothesis))
      .map((cell) => ({
        name: NAMES.indexOf(cell.hypothesis.of.name),
        says: BAY_TESTS.map((one) => chancesOn(cell, one)),
      })),
  );
}
