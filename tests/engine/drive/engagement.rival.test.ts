import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../src/solve/answer.ts';

/**
 * Fifteen engagements against an independent program (SciPy, Radau at relative 1e-8; see tests/truth/README.md).
 * Tolerances: speeds 1 % of their peak and pressures 5 kPa, except within 20 ms of an event, where a jump of the
 * command falls on one or the other side of a sample; event times 20 ms, two controller cycles.
 */
const SERIES = ['engine_rpm', 'turbine_rpm', 'output_rpm', 'clutch_kPa', 'line_kPa'] as const;
type Name = (typeof SERIES)[number];
type Frozen = Record<Name, number[]> & {
  name: string;
  request: Record<string, unknown>;
  step_s: number;
  events: { time_s: number; event: string; code?: string }[];
  engaged_s: number | null;
  turbineBelow50_s: number | null;
};
type Answered = Record<Name | 'time_s', number[]> & {
  events: { time_s: number; event: string; code?: string }[];
  engaged_s: number | null;
};

const frozen = JSON.parse(
  readFileSync(new URL('../../truth/engagement.json', import.meta.url), 'utf8'),
) as Frozen[];

/** The rival's words for what both log. */
const same: Readonly<Record<string, string>> = {
  Neutral: 'neutral commanded',
  'Park commanded': 'park commanded',
};
/** What the engine logs besides: milestones, the check that passed, Park after the trace has ended. */
const extra = ['clutch filled', 'turbine stopped', 'engagement finished'];

describe('engagements against SciPy', () => {
  it('has the fifteen scenarios', () => {
    expect(frozen).toHaveLength(15);
  });

  it.each(frozen.map((one) => [one.name, one] as const))('%s', (_, truth) => {
    const got = answer(truth.request) as unknown as Answered;
    const near = (time: number) =>
      truth.events.some((event) => Math.abs(event.time_s - time) <= 0.0201);
    for (const name of SERIES) {
      expect(got[name]).toHaveLength(truth[name].length);
      const tolerance = name.endsWith('rpm') ? Math.max(0.01 * Math.max(...truth[name]), 1e-6) : 5;
      let compared = 0;
      truth[name].forEach((value, i) => {
        if (near(i * truth.step_s)) return;
        compared += 1;
        expect(Math.abs((got[name][i] ?? Number.NaN) - value)).toBeLessThanOrEqual(tolerance);
      });
      expect(compared).toBeGreaterThan(600);
    }
    const logged = got.events.filter(({ event, time_s }) => !extra.includes(event) && time_s <= 7);
    expect(logged.map(({ event, code }) => [event, code])).toEqual(
      truth.events.map(({ event, code }) => [same[event] ?? event, code]),
    );
    logged.forEach(({ time_s }, i) => {
      expect(Math.abs(time_s - (truth.events[i]?.time_s ?? Number.NaN))).toBeLessThanOrEqual(0.02);
    });
    const stopped = got.events.find(({ event }) => event === 'turbine stopped')?.time_s ?? null;
    for (const [mine, theirs] of [
      [stopped, truth.turbineBelow50_s],
      [got.engaged_s, truth.engaged_s],
    ] as const) {
      if (theirs === null || mine === null) expect(mine).toBe(theirs);
      else expect(Math.abs(mine - theirs)).toBeLessThanOrEqual(0.02);
    }
  });
});
