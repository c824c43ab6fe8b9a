// The page's model with the worker's own work, in one thread.
import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { training } from '../../src/engine/index.ts';
import { logWork } from '../../src/measure/log/answer.ts';
import { blindWords, findingsOf, leftOutWords } from '../../src/measure/log/findings.ts';
import { makeLogReader, TRAINING } from '../../src/measure/log/model.ts';
import { refusal } from '../../src/measure/log/refusal.ts';
import { troubleWords, unitDoubts } from '../../src/measure/log/trouble-words.ts';
import { layOver } from '../../src/measure/log/two-traces.ts';
import { logColumnsKeeper } from '../../src/storage/log-columns.ts';
import { fakeArea } from '../storage/fake-area.ts';

const settled = async (): Promise<void> => {
  for (let i = 0; i < 20; i += 1) await new Promise((done) => setTimeout(done, 0));
};
function reader(area = fakeArea()) {
  const stopped: string[] = [];
  const model = makeLogReader((told) => {
    const work = logWork(told);
    return Promise.resolve({ ask: (ask) => void work(ask), stop: () => stopped.push('stopped') });
  }, logColumnsKeeper(area));
  return { model, stopped, area };
}
const example = (id: string) => new Blob([readFileSync(`public/logs/${id}.csv`)]);
const text = (words: string) => new Blob([words]);

describe('a log is opened', () => {
  it.each(['practice-1', 'practice-2', 'practice-3'])(
    '%s is read without a word from anybody',
    async (id) => {
      const { model } = reader();
      await model.choose(example(id), `${id}.csv`);
      await settled();
      expect(model.state.value.kind).toBe('open');
      expect(model.read.value?.troubles).toEqual([]);
      const { left } = model.read.value ?? {};
      expect(left && leftOutWords(left)).toEqual([]);
      for (const system of ['us', 'si'] as const) {
        const log = model.read.value?.log;
        if (!log) throw new Error('not read');
        const findings = findingsOf(log, system);
        expect(findings.length).toBeGreaterThan(3);
        for (const { text: says } of [
          ...findings,
          ...blindWords(log).map((one) => ({ text: one })),
        ]) {
          expect(says).not.toMatch(/undefined|NaN|null/u);
          expect(says).toMatch(/[.?]$/u);
        }
        // No finding comes twice, and none without a place inside the log.
        expect(new Set(findings.map(({ text: says }) => says)).size).toBe(findings.length);
        for (const { place } of findings) expect(place.at).toBeLessThanOrEqual(log.seconds);
      }
    },
  );

  it('says what the false sensor log shows before all else', async () => {
    const { model } = reader();
    await model.choose(example('practice-3'), 'a.csv');
    await settled();
    const log = model.read.value?.log;
    expect(log && findingsOf(log, 'us')[0]?.text).toContain('never reads under 300');
  });

  it('goes to the place of a finding, in an engagement or by itself', async () => {
    const { model } = reader();
    await model.choose(example('practice-3'), 'a.csv');
    await settled();
    model.goTo({ at: 10, engagement: 0 });
    expect(model.placeCut.value).toBe(model.read.value?.cuts[0]);
    model.goTo({ at: 20, engagement: null });
    await settled();
    expect(model.placeCut.value?.time[0]).toBeGreaterThanOrEqual(17);
    expect(model.placeCut.value?.time.at(-1)).toBeLessThanOrEqual(23);
  });
});

describe('a mapping', () => {
  it('is kept by header, and used again for the next file of that tool', async () => {
    const { model, area } = reader();
    const log = 'When,A,B\n0,700,0\n0.1,690,0\n0.2,680,0\n';
    await model.choose(text(log), 'one.csv');
    await settled();
    expect(model.read.value?.troubles.map(({ role, kind }) => [role, kind])).toEqual([
      ['time', 'missing'],
      ['turbine', 'missing'],
    ]);
    model.setColumn('time', 0);
    model.setColumn('turbine', 1);
    await settled();
    expect(model.read.value?.troubles).toEqual([]);
    const again = reader(area).model;
    await again.choose(text(log), 'two.csv');
    await settled();
    expect(again.fromMemory.value).toBe(true);
    expect(again.mapping.value.columns.turbine?.column).toBe(1);
    expect(again.read.value?.log?.rows).toBe(3);
    // No reading and no file name is kept.
    expect([...area.kept.values()].join('')).not.toMatch(/700|one\.csv/u);
  });

  it('of a browser that keeps nothing holds for this visit, and that is said', async () => {
    const { model, area } = reader();
    area.failWrites = { on: /./u, as: 'SecurityError' };
    await model.choose(example('practice-1'), 'a.csv');
    await settled();
    model.setUnit('temperature', '°C');
    await settled();
    expect(model.notKept.value).toBe(true);
    expect(model.read.value?.troubles.map(({ kind }) => kind)).toEqual(['fahrenheit']);
    // The rest is read all the same.
    expect(model.read.value?.log?.engagements.length).toBe(4);
  });

  it('asks what numbers in the range column stand for, and does not guess', async () => {
    const { model } = reader();
    const rows = Array.from(
      { length: 60 },
      (_, i) => `${i / 10},${i < 28 ? 700 : 0},0,${i < 20 ? 1 : 4}`,
    );
    await model.choose(
      text(['Time (s),Turbine (rpm),Output (rpm),Range', ...rows].join('\n')),
      'a.csv',
    );
    await settled();
    expect(model.mapping.value.ranges).toEqual({});
    expect(model.read.value?.troubles).toEqual([{ role: 'range', kind: 'noRanges' }]);
    model.setRange('1', 'park');
    model.setRange('4', 'drive');
    await settled();
    expect(model.read.value?.troubles).toEqual([]);
    expect(model.read.value?.log?.engagements[0]?.selection.range).toBe('drive');
  });
});

describe('ratios', () => {
  it('are those of the training transmission', () => {
    const { forward, reverse } = training.drive.ratios;
    expect(TRAINING).toEqual({ drive: forward, reverse });
  });
  it('can be typed, or taken from the log', async () => {
    const { model } = reader();
    await model.choose(example('practice-1'), 'a.csv');
    await settled();
    model.setRatios('own', { drive: 3.5, reverse: 3.4 });
    await settled();
    const slip = model.read.value?.log?.engagements[0]?.slip;
    // With a ratio of 3.5 in a gear of 4.0 an eighth of the turbine's speed is taken for slip.
    expect(slip?.kind === 'measured' && slip.peak).toBeGreaterThan(100);
    model.setRatios('log');
    await settled();
    expect(model.ratios().drive).toBeCloseTo(4, 1);
    const now = model.read.value?.log?.engagements[0]?.slip;
    expect(now?.kind === 'measured' && now.peak).toBeLessThan(30);
  });
});

describe('what goes wrong', () => {
  it.each([
    ['%PDF-1.4', 'PDF'],
    ['{"a": 1}', 'JSON'],
    ['', 'empty'],
    ['nothing here\nat all', 'No table'],
  ])('a file that begins %j is refused in a sentence', async (words, part) => {
    const { model } = reader();
    await model.choose(text(words), 'that.csv');
    await settled();
    const { value } = model.state;
    if (value.kind !== 'refused') throw new Error(value.kind);
    expect(refusal(value.trouble, 'that.csv')).toContain(part);
  });

  it('cancel ends the worker, and a late answer changes nothing', async () => {
    const { model, stopped } = reader();
    const opening = model.choose(example('practice-1'), 'a.csv');
    await opening;
    model.cancel();
    await settled();
    expect(stopped.length).toBe(1);
    expect(model.state.value.kind).toBe('cancelled');
  });

  it('the file and the mapping stay where a column is wrong', async () => {
    const { model } = reader();
    await model.choose(example('practice-1'), 'a.csv');
    await settled();
    model.setColumn('time', 3);
    await settled();
    const troubles = model.read.value?.troubles ?? [];
    expect(troubleWords(troubles, 'time')).toMatch(/same column|runs back|hardly moves/u);
    model.setColumn('time', 0);
    await settled();
    expect(model.read.value?.log?.engagements.length).toBe(4);
  });
});

it('two traces are laid over one axis without readings that neither has', () => {
  const laid = layOver({ time: [0, 1, 5], values: [0, 10, 50] }, { time: [0.5], values: [7] });
  expect(laid).toEqual({ x: [0, 0.5, 1, 5], a: [0, 5, 10, 50], b: [null, 7, null, null] });
});

describe('a file with broken rows', () => {
  const rows = Array.from({ length: 30 }, (_, i) => `${i / 10},${700 - i},0,95`);
  const broken = ['Time (s),Turbine (rpm),Output (rpm),Fluid temp (°C)', ...rows];
  broken[5] = '#### no readings here ####';
  broken[9] = '0.8,6';
  broken[12] = '1.1,n/a,0,95';
  broken.push('', '');
  it('says which rows were left out, and why', async () => {
    const { model } = reader();
    await model.choose(text(broken.join('\n')), 'a.csv');
    await settled();
    const { left, log } = model.read.value ?? {};
    expect(log?.rows).toBe(29);
    expect(model.opened.value?.skipped).toBe(1);
    expect(left && leftOutWords(left)).toEqual([
      'Row 6 of the file: it is no row of readings and is left out.',
      'The end of row 10 of the file: it is cut short. What it has is read.',
      'Turbine speed in row 13 of the file: “n/a” is no number and counts as no reading.',
    ]);
  });
  it('names a row behind one that was left out as it stands in the file', async () => {
    const { model } = reader();
    await model.choose(
      text([...broken.slice(0, 20), '0,700,0,95', '0.1,700,0,95'].join('\n')),
      'a',
    );
    await settled();
    expect(troubleWords(model.read.value?.troubles ?? [], 'time')).toContain('row 21 of the file');
  });
  it('says nothing of a whole one', async () => {
    const { model } = reader();
    await model.choose(text([broken[0], ...rows, ''].join('\n')), 'a.csv');
    await settled();
    const { left } = model.read.value ?? {};
    expect(left && leftOutWords(left)).toEqual([]);
  });
});

test('a temperature too hot for a transmission is asked about with both readings of it', () => {
  const doubt = { role: 'temperature', kind: 'fahrenheit', most: 199 } as const;
  expect(troubleWords([doubt], 'temperature')).toBe(
    '199\u00a0°C would be 390\u00a0°F, hotter than any transmission that still drives. Is the column in °F?',
  );
  expect(unitDoubts([doubt, { role: 'time', kind: 'missing' }])).toEqual([
    { role: 'temperature', unit: '°F' },
  ]);
});
