import { afterAll, afterEach, describe, expect, test, vi } from 'vitest';
import type { QuestionSet } from '../../src/quiz/question-set.ts';
import { draw } from '../../src/question-sheet/draw.ts';
import { sheetModel } from '../../src/question-sheet/model.ts';
import { asked } from '../quiz/sample.ts';
import { areas } from './areas.ts';

/** What the site hands out for a lesson. */
const sent = (lesson: string): string => {
  const questions = [1, 2, 3].flatMap((turn) =>
    asked.map((one) => ({ ...one, id: `${lesson}-${one.id}-${turn}` })),
  );
  const set: QuestionSet = { form: 1, lesson, questions, objectives: [] };
  return JSON.stringify(set, (_, value: unknown) =>
    typeof value === 'object' &&
    value !== null &&
    'amount' in value &&
    'si' in value &&
    'us' in value
      ? { si: value.si, us: value.us }
      : value,
  );
};

let answer = (lesson: string): Response => new Response(sent(lesson));
vi.stubGlobal('fetch', (address: string) =>
  Promise.resolve().then(() => answer(/\/questions\/(.+)\.json$/.exec(address)?.[1] ?? '')),
);
afterAll(() => vi.unstubAllGlobals());
afterEach(() => {
  answer = (lesson) => new Response(sent(lesson));
});

function open(search: string, loadDrawer = () => Promise.resolve(draw)) {
  const written: string[] = [];
  const seeds = ['1001', '1002'];
  const model = sheetModel({
    areas,
    search,
    units: 'us',
    base: '/',
    loadDrawer,
    write: (search) => written.push(search),
    drawSeed: () => seeds.shift() ?? '',
  });
  return { model, written };
}

describe('the page', () => {
  test('opens with everything ticked and a seed, and makes sheets at one press', async () => {
    const { model, written } = open('');
    expect(model.linked).toBe(false);
    expect(model.typed.value).toMatchObject({ count: '20', seed: '1001' });
    expect(await model.make()).toBe(true);
    expect(model.made.value?.sheets.a).toHaveLength(20);
    expect(written.at(-1)).toContain('lessons=all&count=20&units=us&seed=1001');
  });

  test('makes the same sheets from the address that it wrote', async () => {
    const first = open('');
    first.model.tick(['three'], false);
    first.model.set({ count: '7', units: 'si' });
    await first.model.make();
    first.model.show('b');
    const again = open(first.written.at(-1) ?? '');
    expect(again.model.linked).toBe(true);
    expect(again.model.shown.value).toBe('b');
    await again.model.make();
    expect(again.model.made.value).toMatchObject({
      sheets: first.model.made.value?.sheets,
      version: first.model.made.value?.version,
      choice: { units: 'si' },
    });
  });

  test('keeps the version of an old link and offers the one of today to copy', async () => {
    const first = open('');
    await first.model.make();
    const then = first.model.made.value?.version ?? '';
    const later = open(first.written.at(-1) ?? '');
    answer = (lesson) => new Response(sent(lesson).replace('The first thing', 'The very first'));
    await later.model.make();
    const made = later.model.made.value;
    expect(made?.choice.version).toBe(then);
    expect(made?.version).not.toBe(then);
    expect(later.written.at(-1)).toContain(`version=${then}`);
    expect(made && later.model.link(made)).toContain(`version=${made?.version}`);
  });

  test('keeps what was typed, and the sheets that were there, when something is refused or does not come', async () => {
    const { model } = open('');
    await model.make();
    const before = model.made.value;
    model.set({ count: 'many' });
    expect(await model.make()).toBe(false);
    expect(model.faults.value.count).toContain('many');
    expect(model.typed.value.count).toBe('many');
    model.set({ count: '6' });
    for (const [miss, bad] of [
      ['offline', raise],
      ['refused', () => new Response('', { status: 500 })],
      ['foreign', () => new Response('<p>Please log in</p>')],
    ] as const) {
      answer = bad;
      expect(await model.make()).toBe(false);
      expect(model.miss.value).toBe(miss);
      expect(model.made.value).toBe(before);
    }
    answer = (lesson) => new Response(sent(lesson));
    expect(await model.make()).toBe(true);
    expect(model.miss.value).toBeUndefined();
    expect(model.made.value?.sheets.b).toHaveLength(6);
  });

  test('says when what draws cannot be had', async () => {
    const { model } = open('', () => Promise.reject(new Error('no line')));
    expect(await model.make()).toBe(false);
    expect(model.miss.value).toBe('stuck');
    expect(model.loading.value).toBe(false);
  });

  test('another seed forgets the version of the old sheet', () => {
    const { model } = open('?seed=a&lessons=all&count=9&version=7k2m9q');
    model.drawSeed();
    expect(model.typed.value).toMatchObject({ seed: '1001', version: '' });
  });
});

function raise(): never {
  throw new TypeError('Failed to fetch');
}
