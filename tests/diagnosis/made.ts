/** Hypotheses made by hand: what each test reads is said, and nothing is solved. */
import type { Expected, Hypothesis } from '../../src/diagnosis/cells.ts';
import { CLASSES, type FaultClass } from '../../src/diagnosis/hypotheses.ts';
import { isNumeric, NUMERIC, testOf, type NumericTest } from '../../src/diagnosis/tests.ts';
import { SHARED } from '../../src/diagnosis/table.ts';

interface Said {
  readonly mean: number;
  /** Variance. */
  readonly own?: number;
  /** By place of what cars share. */
  readonly moves?: Readonly<Record<number, number>>;
}

export const numeric = (id: string): NumericTest => {
  const one = testOf(id);
  if (!isNumeric(one)) throw new Error(`${id} reads no number.`);
  return one;
};

const movesOf = (said: Said['moves'] = {}): Float64Array =>
  Float64Array.from({ length: SHARED }, (_, i) => said[i] ?? 0);

/** What no test tells apart, but those that are said. */
export function made(
  of: FaultClass,
  said: Readonly<Record<string, Said>> = {},
  severity = 1,
): Hypothesis {
  const index = CLASSES.findIndex(
    ({ name, circuit }) => name === of.name && circuit === of.circuit,
  );
  if (index < 0) throw new Error(`No class ${JSON.stringify(of)}.`);
  const expected = NUMERIC.map(({ id, span: [from, to] }): Expected => {
    const { mean = (from + to) / 2, own = 1, moves } = said[id] ?? {};
    return { mean, own, moves: movesOf(moves) };
  });
  const signs = {
    stop: { drive: 0.8, reverse: 0.8 },
    slip: { drive: 3.4, reverse: 3.4 },
    highTap: 800,
  };
  return { of, index, severity, expected, signs };
}
