import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../src/solve/answer.ts';

/**
 * The steady state against tests/truth/steady.json: 200 random transmissions, a third of them by sheets of their own, solved by another program, in another
 * language, another way (all pressures and flows at once; see steady.py beside it).
 */
interface SteadyAnswer {
  readonly line_kPa: number;
  readonly circuits: Readonly<
    Record<
      string,
      { readonly pressure_kPa: number; readonly leak_Lmin: number; readonly holds_Nm: number }
    >
  >;
  readonly pump_Lmin: number;
  readonly leftOver_Lmin: number;
  readonly cooler_Lmin: number;
}
interface Case {
  readonly request: {
    readonly line_kPa: number;
    readonly clutch_kPa: number;
    readonly applied: readonly string[];
  };
  readonly answer: SteadyAnswer;
}

const cases = JSON.parse(
  readFileSync(new URL('../../truth/steady.json', import.meta.url), 'utf8'),
) as Case[];

const RELATIVE = 1e-6;

/** Every number of an answer under its path, so that a missing or extra one shows. */
function flat(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) throw new Error(`${path} is ${String(value)}`);
  return Object.entries(value).flatMap(([key, inner]) => flat(inner, `${path}/${key}`));
}

/**
 * Where the relative measure ends. Left over is the difference of flows as large as the pump's, and torque the
 * difference of piston and spring force: near zero each keeps the rounding of what it came from. A part in 1e9 of
 * the pump's flow is what the balance is held to anyway; of the spring's 76 N m of torque it is 1e-7 N m.
 */
function floorFor(path: string, expected: SteadyAnswer): number {
  if (path.endsWith('leftOver_Lmin') || path.endsWith('cooler_Lmin'))
    return 1e-9 * expected.pump_Lmin;
  if (path.endsWith('holds_Nm')) return 1e-7;
  return 0;
}

describe('steady state against the independent program', () => {
  it('has its 200 cases, of both kinds', () => {
    expect(cases).toHaveLength(200);
    const regulated = cases.filter((one) => one.answer.leftOver_Lmin > 0).length;
    expect(regulated).toBeGreaterThan(40);
    expect(regulated).toBeLessThan(160);
  });

  it.each(cases.map((one, index) => [index, one] as const))('case %d', (_index, one) => {
    const got = answer(one.request);
    expect('error' in got ? got.error : undefined).toBeUndefined();
    const mine = new Map(flat(got));
    const theirs = flat(one.answer);
    expect([...mine.keys()].sort()).toEqual(theirs.map(([path]) => path).sort());
    // Four numbers of the line, three of each circuit applied.
    expect(theirs).toHaveLength(4 + 3 * one.request.applied.length);
    for (const [path, expected] of theirs) {
      const value = mine.get(path) ?? Number.NaN;
      const allowed = RELATIVE * Math.abs(expected) + floorFor(path, one.answer);
      expect(Number.isFinite(value) && Number.isFinite(expected), path).toBe(true);
      expect(
        Math.abs(value - expected),
        `${path}: ${value} against ${expected}`,
      ).toBeLessThanOrEqual(allowed);
    }
  });
});
