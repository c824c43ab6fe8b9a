// The example logs against tests/truth/log.py, written from the definitions alone; see tests/truth/README.md.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EXAMPLES, exampleLog } from '../../src/log/examples/logs.ts';
import { exampleText, logRead } from './read-log.ts';

interface Truth {
  readonly rows: number;
  readonly turbineGone: readonly number[];
  readonly ratios: Readonly<Partial<Record<'drive' | 'reverse', number>>>;
  readonly engagements: readonly {
    readonly range: string;
    readonly at: number;
    readonly temp: number;
    readonly stop: {
      readonly low?: number;
      readonly high?: number;
      readonly watched?: number;
      readonly lowest?: number;
    };
    readonly slip: {
      readonly peak: number;
      readonly high: number;
      readonly rows: number;
      readonly begun: number;
    };
  }[];
}
const truths = JSON.parse(readFileSync('tests/truth/log.json', 'utf8')) as Record<string, Truth>;
/** Times are printed to a thousandth of a second at best; what is left is the last bit of a subtraction. */
const DIGITS = 6;

describe.each(EXAMPLES)('%s', (id) => {
  const truth = truths[id];
  if (truth === undefined) throw new Error(`${id} has no frozen answers.`);
  const read = logRead(exampleText(id));

  it('is the file that its script writes', () => {
    expect(readFileSync(`public/logs/${id}.csv`, 'utf8')).toBe(exampleLog(id));
  });

  it('has the rows and the engagements of the rival', () => {
    expect(read.rows).toBe(truth.rows);
    expect(read.engagements.map(({ selection }) => selection.range)).toEqual(
      truth.engagements.map(({ range }) => range),
    );
  });

  it('has the stops of the rival', () => {
    for (const [i, { stop, at, tempC, takeoff }] of read.engagements.entries()) {
      const there = truth.engagements[i];
      expect(at).toBeCloseTo(there?.at ?? Number.NaN, DIGITS);
      expect(tempC).toBeCloseTo(there?.temp ?? Number.NaN, DIGITS);
      expect(takeoff).toBeCloseTo(there?.slip.begun ?? Number.NaN, DIGITS);
      if (stop.kind === 'stopped') {
        expect(stop.after.low).toBeCloseTo(there?.stop.low ?? Number.NaN, DIGITS);
        expect(stop.after.high).toBeCloseTo(there?.stop.high ?? Number.NaN, DIGITS);
      } else {
        expect(stop.kind).toBe('notStopped');
        if (stop.kind !== 'notStopped') return;
        expect(stop.watched).toBeCloseTo(there?.stop.watched ?? Number.NaN, DIGITS);
        expect(stop.lowest).toBeCloseTo(there?.stop.lowest ?? Number.NaN, DIGITS);
      }
    }
  });

  it('has the slip of the rival', () => {
    for (const [i, { slip }] of read.engagements.entries()) {
      const there = truth.engagements[i]?.slip;
      if (slip.kind !== 'measured') throw new Error(`${id}, engagement ${i}: ${slip.kind}`);
      expect(slip.peak).toBeCloseTo(there?.peak ?? Number.NaN, DIGITS);
      expect(slip.between.high).toBeCloseTo(there?.high ?? Number.NaN, DIGITS);
      expect(slip.rows).toBe(there?.rows);
    }
  });

  it('has the dropouts of the rival', () => {
    expect(read.sensors.turbineDropouts.length).toBe(truth.turbineGone.length);
    for (const [i, at] of read.sensors.turbineDropouts.entries()) {
      expect(at).toBeCloseTo(truth.turbineGone[i] ?? Number.NaN, DIGITS);
    }
  });

  // The rival takes another median over other stretches: within half of one percent both are the gear's.
  it('has the ratios of the rival, and those of the training transmission', () => {
    for (const range of ['drive', 'reverse'] as const) {
      const first = read.gears.find((gear) => gear.range === range)?.ratio;
      const there = truth.ratios[range];
      expect(first === undefined).toBe(there === undefined);
      if (first === undefined || there === undefined) continue;
      expect(Math.abs(first / there - 1)).toBeLessThan(0.005);
      expect(Math.abs(first / { drive: 4, reverse: 3.4 }[range] - 1)).toBeLessThan(0.005);
    }
  });
});

describe('what the three logs were made to show', () => {
  it('the healthy car: every stop below a second, no sign of a sensor', () => {
    const { engagements, sensors } = logRead(exampleText('practice-1'));
    for (const { stop } of engagements)
      expect(stop.kind === 'stopped' && stop.after.high < 1).toBe(true);
    expect(sensors).toEqual({ turbineDropouts: [], outputDropouts: [], floor: null });
  });
  it('the split seal: stops cold, never hot, in either range', () => {
    const { engagements } = logRead(exampleText('practice-2'));
    expect(engagements.map(({ stop }) => stop.kind)).toEqual([
      'stopped',
      'stopped',
      'notStopped',
      'notStopped',
    ]);
  });
  it('the false sensor: a floor of 300 rpm, and readings gone on the road', () => {
    const { sensors } = logRead(exampleText('practice-3'));
    // 300 rpm: the fault's own figure, model paper, section 10; the tool of this log rounds to 4 rpm.
    expect(sensors.floor?.rpm).toBe(300);
    expect(sensors.turbineDropouts.length).toBeGreaterThan(2);
  });
});
