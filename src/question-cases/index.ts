/** The readings of short cases: what each costs and shows on the hidden car, and the cheapest that decide. */
import {
  discrepancyOf,
  errorOf,
  isNumeric,
  LONGEST_STOP,
  offScale,
  SET_UP_MINUTES,
  TESTS,
  type NumericTest,
} from '../diagnosis/tests.ts';
import { printBoth } from '../quantity/print-both.ts';
import { printer } from '../quantity/print.ts';
import { speed } from '../quantity/quantities.ts';
import type { QuantityName } from '../quantity/by-name.ts';
import type { CaseMade, Passage } from '../quiz/asked.ts';
import type { CaseQuestion } from '../quiz/schema.ts';
import { carsOf, type HiddenCar } from './cars.ts';
import { cheapestThatDecide } from './cheapest.ts';
import { words } from './words.en.ts';

/** Readings that lie this many standard deviations apart are told apart in a shop. */
const APART = 3;

type CaseKind = keyof typeof words.tests;
type CaseTest = NumericTest & { readonly kind: CaseKind };
const quantities: Readonly<Record<CaseKind, QuantityName>> = {
  engineOffTurbine: 'speed',
  stopTime: 'seconds',
  takeoffSlip: 'speed',
  linePressure: 'pressure',
  clutchPressure: 'pressure',
  coolerFlow: 'flow',
};
const usable = TESTS.filter(
  (test): test is CaseTest => isNumeric(test) && test.kind in words.tests,
);

/** Throws a sentence on a test that a short case has not. */
function testNamed(id: string): CaseTest {
  const test = usable.find((one) => one.id === id);
  if (test === undefined)
    throw new Error(
      `A short case has no reading "${id}". It may have: ${usable.map((one) => one.id).join(', ')}.`,
    );
  return test;
}

const both = (text: (system: 'si' | 'us') => string): Passage => {
  const [si, us] = [text('si'), text('us')];
  return si === us ? [si] : [{ si, us }];
};

const nameOf = ({ kind, at }: CaseTest): Passage =>
  both((system) =>
    words.tests[kind]({
      circuit:
        at.circuit === undefined
          ? ''
          : ((words.circuits as Record<string, string>)[at.circuit] ?? ''),
      range: at.range === undefined ? '' : words.ranges[at.range],
      warm: at.warmth === undefined ? '' : words.warmths[at.warmth],
      speed: at.rpm === undefined ? '' : printer(system)(at.rpm, speed),
    }),
  );

function shown(test: CaseTest, read: number): Passage {
  const value = offScale(test, read);
  if (test.kind === 'stopTime' && value > LONGEST_STOP) return [words.never];
  return [printBoth(value, quantities[test.kind])];
}

/** Whether a shop tells two readings of one test apart. */
function apart(test: NumericTest, one: number, other: number): boolean {
  const doubt = Math.hypot(errorOf(test, one), discrepancyOf(test, one));
  return Math.abs(one - other) > APART * doubt;
}

/** Throws a sentence where a reading or a fault is unknown, and where all readings together leave a doubt. */
export function readingsOf({ readings, options, arrives = 'cold' }: CaseQuestion): CaseMade {
  const tests = readings.map(({ test }) => testNamed(test));
  const { hidden, others } = carsOf(options);
  const priced = tests.map((test) => ({
    id: test.id,
    minutes: test.minutes,
    warmth: test.at.warmth,
    setUps: test.setUps.map((id) => ({ id, minutes: SET_UP_MINUTES[id] })),
  }));
  /** Whether some reading of a set tells a car from the hidden one. */
  const tells = (set: readonly string[], car: HiddenCar): boolean =>
    tests.some((test) => set.includes(test.id) && apart(test, hidden(test.id), car(test.id)));
  const decides = (set: readonly string[]): boolean =>
    others.every(({ cars }) => cars.every((car) => tells(set, car)));

  const cheapest = cheapestThatDecide(priced, decides, arrives);
  if (cheapest === undefined) {
    const all = tests.map(({ id }) => id);
    const left = others.filter(({ cars }) => !cars.every((car) => tells(all, car)));
    throw new Error(
      `All of its readings together do not tell the right option from ${left.map(({ id }) => id).join(', ')}.`,
    );
  }
  return {
    readings: tests.map((test, i) => ({
      ...(priced[i] ?? { id: test.id, minutes: test.minutes, setUps: [] }),
      words: nameOf(test),
      reads: shown(test, hidden(test.id)),
    })),
    cheapest: cheapest.map(({ id }) => id),
  };
}
