import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../src/solve/answer.ts';

/** 60 bench air tests against tests/truth/air.json: another program, its balance at the tester's hole found by halving. */
interface Case {
  readonly request: Readonly<Record<string, unknown>>;
  readonly answer: { readonly flow_gs: number; readonly held_percent: number };
}
const cases = JSON.parse(
  readFileSync(new URL('../../truth/air.json', import.meta.url), 'utf8'),
) as Case[];

/**
 * That program takes the gas constant as 287.05, the engine 287.0528 (US Standard Atmosphere 1976): a slot's flow goes
 * with its inverse, 1e-5 apart. Nothing else may differ.
 */
const RELATIVE = 1.2e-5;

describe('bench air tests against the independent program', () => {
  it('has its 60 cases, from sound to wide open', () => {
    expect(cases).toHaveLength(60);
    const held = cases.map((one) => one.answer.held_percent);
    expect(Math.min(...held)).toBeLessThan(5);
    expect(Math.max(...held)).toBe(100);
  });

  it.each(cases.map((one, index) => [index, one] as const))('case %d', (_, one) => {
    const got = answer(one.request) as Record<string, number>;
    expect(Object.keys(got).sort()).toEqual(['flow_gs', 'held_percent']);
    for (const key of ['flow_gs', 'held_percent'] as const) {
      const expected = one.answer[key];
      expect(Math.abs((got[key] ?? Number.NaN) - expected), key).toBeLessThanOrEqual(
        RELATIVE * Math.abs(expected),
      );
    }
  });
});
