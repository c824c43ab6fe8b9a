/**
 * The worked examples that were handed over with the planner's specification, answered by a first implementation in another
 * language (tests/truth/diagnosis-examples.json, as it came). Tolerances are those of the specification, section 9.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/solve/answer.ts';

interface Told {
  readonly error?: string;
  readonly path?: string;
  readonly faults: readonly {
    readonly fault: string;
    readonly probability: number;
    readonly circuits?: Readonly<Record<string, number>>;
    readonly severity?: readonly number[];
  }[];
  readonly next: readonly (Readonly<Record<string, unknown>> & { bits: number; minutes: number })[];
  readonly fit: { readonly d2: number; readonly readings: number; readonly p: number | null };
}
const examples = JSON.parse(
  readFileSync('tests/truth/diagnosis-examples.json', 'utf8'),
) as readonly {
  readonly name: string;
  readonly request: unknown;
  readonly answer: Told;
}[];
const good = examples.filter(({ answer: told }) => told.error === undefined);
const bad = examples.filter(({ answer: told }) => told.error !== undefined);

test('there are examples of both kinds', () => {
  expect(good.length).toBeGreaterThanOrEqual(6);
  expect(bad.length).toBeGreaterThanOrEqual(10);
});

const nameOf = (one: Told['next'][number]): string =>
  JSON.stringify(
    Object.entries(one)
      .filter(([key]) => key !== 'bits' && key !== 'minutes')
      .sort(),
  );

describe.each(good)('$name', ({ request, answer: told }) => {
  const got = answer(request) as unknown as Told;

  test('probabilities within 0.03, and they sum to 1', () => {
    for (const { fault, probability, circuits = {} } of told.faults) {
      const mine = got.faults.find((one) => one.fault === fault);
      expect(Math.abs((mine?.probability ?? NaN) - probability), fault).toBeLessThanOrEqual(0.03);
      for (const [circuit, share] of Object.entries(circuits)) {
        const here = mine?.circuits?.[circuit] ?? NaN;
        expect(Math.abs(here - share), `${fault} ${circuit}`).toBeLessThanOrEqual(0.03);
      }
    }
    expect(got.faults.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
  });

  test('severities within 0.06', () => {
    for (const { fault, severity } of told.faults) {
      const mine = got.faults.find((one) => one.fault === fault);
      severity?.forEach((point, i) => {
        expect(Math.abs((mine?.severity?.[i] ?? NaN) - point), fault).toBeLessThanOrEqual(0.06);
      });
    }
  });

  test('bits within 0.05 or a tenth, the same minutes', () => {
    const mine = new Map(got.next.map((one) => [nameOf(one), one]));
    for (const one of told.next) {
      const here = mine.get(nameOf(one));
      expect(here, nameOf(one)).toBeDefined();
      expect(Math.abs((here?.bits ?? NaN) - one.bits), nameOf(one)).toBeLessThanOrEqual(
        Math.max(0.05, 0.1 * one.bits),
      );
      expect(here?.minutes, nameOf(one)).toBe(one.minutes);
    }
  });

  test('the first test has a rate within a tenth of the best', () => {
    const [best] = told.next;
    const [mine] = got.next;
    if (best === undefined) {
      expect(mine).toBeUndefined();
      return;
    }
    const same = told.next.find((one) => mine && nameOf(one) === nameOf(mine));
    const rate = (same?.bits ?? 0) / (same?.minutes ?? 1);
    expect(rate).toBeGreaterThanOrEqual((0.9 * best.bits) / best.minutes);
  });

  test('fit within a tenth or 0.3', () => {
    expect(got.fit.readings).toBe(told.fit.readings);
    expect(Math.abs(got.fit.d2 - told.fit.d2)).toBeLessThanOrEqual(
      Math.max(0.3, 0.1 * told.fit.d2),
    );
  });
});

test.each(bad)('$name: a sentence, at the place', ({ request, answer: told }) => {
  const got = answer(request) as unknown as { error: string; path: string };
  expect(got.path).toBe(told.path);
  expect(got.error).toMatch(/^.{20,}\.$/u);
});
