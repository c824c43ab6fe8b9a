/**
 * What a code and its frame leave, against an enumeration written here from the kept rows, with the steps as the page tells
 * them: every car, every drive, counted into one table. It shares no code with src/cases/frame-list.ts.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  jobOf,
  LINES,
  LISTED,
  lineWorth,
  storesFirst,
  type Line,
} from '../../../src/cases/frame-list.ts';
import { keptFrames } from '../../../src/cases/kept-frames.ts';
import { CLASSES } from '../../../src/diagnosis/hypotheses.ts';
import { linesOf, makeModel } from '../../../src/widgets/freeze-frame/model.ts';
import { readingOf } from '../../../src/widgets/freeze-frame/print.ts';
import { sim } from '../../../src/widgets/freeze-frame/sim.ts';
import { tasks } from '../../../src/widgets/freeze-frame/tasks.ts';
import { words } from '../../../src/widgets/freeze-frame/words.en.ts';
import { frameOf, reverseOf, type KeptFrame } from '../../cases/kept-rows.ts';
import { begun } from '../../simulation/task-of.ts';

const TEMPS = [0, 20, 40, 60, 80, 100];
interface OneDrive {
  readonly name: string;
  readonly weight: number;
  readonly reads: Readonly<Record<Line, string>>;
}

const inSteps = (frame: KeptFrame) => ({
  temp: String(frame.tempC),
  time: frame.after < 3.3 ? 'brake let go' : 'later',
  speeds:
    frame.turbine >= 0.95 * frame.engine
      ? 'free'
      : frame.turbine >= 0.6 * frame.engine
        ? 'dragged'
        : 'pulled down',
  output: frame.output < 5 ? 'stands' : frame.output < 50 ? 'creeps' : 'rolls',
  command: frame.command >= 350 ? 'risen' : 'not',
});
const NOTHING = { temp: '-', time: '-', speeds: '-', output: '-', command: '-' };

/** Sixteen names weigh alike, a name's circuits alike, a circuit's cars alike, a car's drives alike. */
function everyDrive(): OneDrive[] {
  const nameOf = (row: readonly number[]) => CLASSES[row[0] ?? -1]?.name ?? '';
  return keptFrames.flatMap((row) => {
    const ofName = keptFrames.filter((other) => nameOf(other) === nameOf(row));
    const classes = new Set(ofName.map(([index]) => index)).size;
    const cars = ofName.filter(([index]) => index === row[0]).length;
    return TEMPS.map((tempC) => {
      const frame = frameOf(row, tempC);
      return {
        name: nameOf(row),
        weight: 1 / 16 / classes / cars / 6,
        reads: {
          code: frame ? 'P0731' : 'none',
          other: reverseOf(row, tempC) ? 'P0736' : 'none',
          ...(frame ? inSteps(frame) : NOTHING),
        },
      };
    });
  });
}
const all = everyDrive();

/** Bits by C. E. Shannon, 1948: the sum of p log2(p / (p of the name x p of the reading)) over both. */
function information(among: readonly OneDrive[], line: Line): number {
  const add = (table: Map<string, number>, key: string, weight: number) =>
    table.set(key, (table.get(key) ?? 0) + weight);
  const [joint, names, readings] = [new Map(), new Map(), new Map()] as Map<string, number>[];
  if (!joint || !names || !readings) throw new Error('three tables');
  let total = 0;
  for (const { name, weight, reads } of among) {
    add(joint, `${name}/${reads[line]}`, weight);
    add(names, name, weight);
    add(readings, reads[line], weight);
    total += weight;
  }
  let bits = 0;
  for (const [key, p] of joint) {
    const [name = '', reading = ''] = key.split('/');
    const alone = ((names.get(name) ?? 0) / total) * ((readings.get(reading) ?? 0) / total);
    bits += (p / total) * Math.log2(p / total / alone);
  }
  return bits;
}

const JOBS = [
  ['transferSeal', 60, 50, 100],
  ['transferSeal', 60, 25, 20],
  ['sealingRings', 45, 50, 100],
  ['filter', 55, 0, 0],
  ['turbineSensor', 100, 0, 40],
] as const;

describe.each(JOBS)('%s', (name, _percent, gone, tempC) => {
  const job = jobOf(name, gone, tempC);
  const mine = all.find(
    ({ name: of, reads }) =>
      of === name &&
      reads.code === (job.first ? 'P0731' : 'none') &&
      (!job.first ||
        (reads.temp === String(tempC) &&
          reads.other === (job.reverse ? 'P0736' : 'none') &&
          reads.speeds === inSteps({ ...job.first, tempC }).speeds &&
          reads.time === inSteps({ ...job.first, tempC }).time &&
          reads.output === inSteps({ ...job.first, tempC }).output)),
  );
  const reads: readonly (readonly Line[])[] = [
    [],
    ['code'],
    ['code', 'other'],
    ['code', 'temp', 'speeds'],
    LINES,
  ];
  test.each(reads.map((read) => ({ read })))('after $read', ({ read }) => {
    const among = all.filter((one) => read.every((line) => one.reads[line] === mine?.reads[line]));
    expect(among.length).toBeGreaterThan(0);
    const model = makeModel();
    model.apply({ ...linesOf(...read), fault: name, gone, warm: String(tempC), cleared: false });
    const total = among.reduce((sum, { weight }) => sum + weight, 0);
    LISTED.forEach((listed, i) => {
      const share = among
        .filter((one) => one.name === listed)
        .reduce((sum, one) => sum + one.weight, 0);
      expect(model.list.value[i]).toBeCloseTo(share / total, 9);
    });
    expect(model.left.value).toBe(new Set(among.map((one) => one.name)).size);
    for (const line of LINES.filter((one) => !read.includes(one))) {
      expect([line, lineWorth(job, read, line)]).toEqual([
        line,
        expect.closeTo(information(among, line), 9),
      ]);
    }
  });
});

test('before anything is read sixteen names are four bits, by hand', () => {
  const model = makeModel();
  model.apply(linesOf());
  expect(Math.log2(model.open.value)).toBeCloseTo(4, 9);
});

test('twelve faults store it: those of which a kept row has a frame', () => {
  const named = new Set(all.filter(({ reads }) => reads.code === 'P0731').map(({ name }) => name));
  expect(new Set(storesFirst())).toEqual(named);
  const model = makeModel();
  model.apply({ ...sim.predict.start, ...sim.predict.end });
  expect(sim.predict.outcome(model).option).toBe('most');
});

test('the car of the lesson is left with a split seal and a low pressure control, as its words say', () => {
  const model = makeModel();
  model.apply({ ...linesOf(...LINES), fault: 'transferSeal', gone: 50, warm: '100' });
  const left = LISTED.filter((_name, i) => (model.list.value[i] ?? 0) > 0);
  expect(left).toEqual(['transferSeal', 'pressureControl']);
});

test('once the time is read, the command tells nothing more', () => {
  const job = jobOf('transferSeal', 50, 100);
  expect(lineWorth(job, ['code', 'time'], 'command')).toBeLessThan(1e-9);
  expect(lineWorth(job, ['code'], 'command')).toBeGreaterThan(0.1);
});

describe('Clear', () => {
  test('leaves the code on the sheet and takes all else', () => {
    const model = makeModel();
    model.apply({ ...linesOf(...LINES), cleared: true });
    const kept = makeModel();
    kept.apply(linesOf('code'));
    expect(model.list.value).toEqual(kept.list.value);
    expect(model.openKept.value).toBeLessThan(model.open.value);
    expect(sim.says(model, 'us')).toMatch(/^Cleared/u);
  });
});

describe('the words of the codes', () => {
  // Wording on which three public lists agree, as the lesson on slip prints it with its source.
  const lesson = readFileSync('content/en/lessons/what-slip-is.mdx', 'utf8');
  test.each([
    ['P0731', words.readings.code],
    ['P0736', words.readings.other],
  ])('%s', (code, reading) => {
    const row = new RegExp(`\\| ${code} \\| (.+?) \\|`, 'u').exec(lesson)?.[1];
    expect(row).toBeDefined();
    expect(reading).toContain(row);
    expect(reading.startsWith(code)).toBe(true);
  });
});

test('a reading says what was read, and a drive without a code has no frame', () => {
  const job = jobOf('transferSeal', 50, 100);
  expect(readingOf(job, 'temp', 'si')).toContain('100');
  expect(readingOf(job, 'temp', 'us')).toContain('212');
  expect(readingOf(jobOf('healthy', 0, 100), 'speeds', 'si')).toBe(words.readings.noFrame);
});

describe('the tasks', () => {
  test('two lines do it, if they are the right two', () => {
    const { task, model } = begun(tasks, makeModel, 'two-lines');
    const with2 = (...read: readonly Line[]) => {
      model.apply({ ...linesOf('code', ...read) });
      return task.verdict?.(model)?.is;
    };
    expect(with2('other', 'speeds')).toBe('done');
    expect(with2('other', 'temp')).not.toBe('done');
    expect(with2('temp', 'speeds')).not.toBe('done');
    expect(with2('temp', 'other', 'speeds')).toBe('too-high');
  });

  test('the crack stores from the coolest drive that has a frame in its kept row', () => {
    const { task, model } = begun(tasks, makeModel, 'comes-back');
    const row = model.job.value.car;
    const coolest = TEMPS.find((tempC) => frameOf(row, tempC) !== null) ?? Number.NaN;
    const is = TEMPS.map((tempC) => {
      model.apply({ warm: String(tempC) });
      return task.verdict?.(model)?.is;
    });
    expect(is).toEqual(
      TEMPS.map((tempC) => (tempC < coolest ? 'too-low' : tempC > coolest ? 'too-high' : 'done')),
    );
    expect(coolest).toBeGreaterThan(20);
  });

  test('only the false sensor has a good clutch behind its code', () => {
    const { task, model } = begun(tasks, makeModel, 'sound-clutch');
    const good = LISTED.filter((fault) => {
      model.apply({ fault });
      return task.done(model);
    });
    expect(good).toEqual(['turbineSensor']);
  });
});
