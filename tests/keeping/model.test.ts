import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { lossesOf, rowsOf } from '../../src/keeping/compared-in-words.ts';
import { factsOf } from '../../src/keeping/in-words.ts';
import { keepModel, type GivenFile } from '../../src/keeping/model.ts';
import * as stores from '../../src/keeping/stores.ts';
import { writeBundle, type Bundle } from '../../src/storage/bundle/bundle.ts';
import type { Rehearsal } from '../../src/storage/rehearsals.ts';
import { aBundle, emptyBundle } from '../storage/bundle/a-bundle.ts';
import {
  aDevice,
  contentOf,
  filled,
  NOW,
  on,
  type TestDevice,
} from '../storage/bundle/a-device.ts';

afterEach(() => vi.unstubAllGlobals());

function page(one: TestDevice, load: () => Promise<typeof stores> = () => Promise.resolve(stores)) {
  const files: { name: string; text: string }[] = [];
  const model = keepModel({
    load,
    device: () => one.device,
    save: (name, text) => files.push({ name, text }),
    now: () => NOW,
    changed: () => undefined,
  });
  return { model, files };
}
const given = (text: string, size = text.length): GivenFile => ({
  name: 'kept.json',
  size,
  text: () => Promise.resolve(text),
});
const file = (bundle: Bundle) => given(writeBundle(bundle));

describe('what is kept, in words', () => {
  const answer = (item: string, seed: number): Bundle['answers'][number] => ({
    at: NOW,
    answer: {
      ...{ kind: 'retrieval', lesson: 'a', item, seed },
      ...{ given: { kind: 'chosen', ids: [] }, result: 'right', certainty: 2 },
    },
  });
  const prediction: Bundle['answers'][number] = {
    at: NOW,
    answer: {
      ...{ kind: 'prediction', sim: 'fluid', option: 'a' },
      ...{ confidence: 'certain', right: true },
    },
  };
  const round = {
    ...{ day: 1, seed: 7 },
    items: [
      { id: 'q-1', lesson: 'a' },
      { id: 'q-2', lesson: 'a' },
    ],
  };
  const plan = { exam: null, minutes: 5, round } as const;

  test('answers to questions and predictions are told apart', () => {
    const facts = (...answers: Bundle['answers']) => factsOf({ ...emptyBundle, answers })[0];
    expect(facts(answer('q-1', 1), answer('q-2', 1), prediction)).toBe(
      '2 answers to questions and 1 prediction in a simulation',
    );
    expect(facts(answer('q-1', 1))).toBe('1 answer to a question');
    expect(facts(prediction, prediction)).toBe('2 predictions in simulations');
  });

  test('a round is under way until its last question is answered', () => {
    const facts = (...answers: Bundle['answers']) =>
      factsOf({ ...emptyBundle, plan, answers }, 0, round.day).at(-1);
    const over = 'Your plan: no exam, rounds of 5 minutes';
    expect(facts(answer('q-1', 7))).toBe(`${over}, and a round under way`);
    expect(facts(answer('q-1', 7), answer('q-2', 6), answer('q-3', 7))).toMatch(/under way$/u);
    expect(facts(answer('q-1', 7), answer('q-2', 7))).toBe(over);
    // The rounds of another day are begun anew.
    for (const day of [round.day - 1, round.day + 1]) {
      const then = factsOf({ ...emptyBundle, plan, answers: [answer('q-1', 7)] }, 0, day).at(-1);
      expect(then, String(day)).toBe(over);
    }
  });
});

describe('the page', () => {
  test('saves everything, with a name only where one was typed', async () => {
    const { model, files } = page(await filled(aBundle));
    await model.save('  ');
    await model.save(' Bay 3 ');
    const read = files.map(({ text }) => stores.readBundle(text));
    expect(read.map((one) => one.ok && one.bundle.name)).toEqual([null, 'Bay 3']);
    expect(read.every((one) => one.ok)).toBe(true);
    expect(read[0]?.ok && contentOf(read[0].bundle)).toEqual(contentOf(aBundle));
    expect(files[0]?.name).toMatch(/^practice-\d{4}-\d{2}-\d{2}-\d{4}\.json$/);
    expect(files[1]?.name).toMatch(/^practice-Bay-3-\d{4}-\d{2}-\d{2}\.json$/);
  });

  // What no system forbids in the name of a file; of names in other scripts the letters stay.
  test.each([
    ['José Núñez', /^practice-José-Núñez-\d{4}-\d{2}-\d{2}\.json$/],
    ['../A:b*c?"<>|', /^practice-A-b-c-\d{4}-\d{2}-\d{2}\.json$/],
    ['Юра', /^practice-Юра-\d{4}-\d{2}-\d{2}\.json$/],
    ['...', /^practice-\d{4}-\d{2}-\d{2}-\d{4}\.json$/],
    ['n'.repeat(300), /^practice-n{40}-\d{4}-\d{2}-\d{2}\.json$/],
  ])('the file of %j says whose it is', async (name, called) => {
    const { model, files } = page(await filled(aBundle));
    await model.save(name);
    expect(files[0]?.name).toMatch(called);
  });

  test('a file that is refused changes nothing, and a good one is only compared', async () => {
    const one = await filled({ ...emptyBundle, plan: { exam: null, minutes: 5, round: null } });
    const before = await on(one);
    const { model } = page(one);
    await model.choose(given('{"kind":"flash-cards"}'));
    expect(model.refusal.value).toMatchObject({ kind: 'refused', name: 'kept.json' });
    const never = { ...given('', 50_000_000), text: () => Promise.reject(new Error('not read')) };
    await model.choose(never);
    expect(model.refusal.value).toMatchObject({
      sentence: expect.stringMatching(/25 MB/) as string,
    });
    await model.choose({ ...never, size: 10 });
    expect(model.refusal.value).toEqual({ kind: 'notRead', name: 'kept.json' });
    await model.choose(file(aBundle));
    expect(model.refusal.value).toBeUndefined();
    expect(model.opened.value?.toChoose).toEqual(['plan']);
    expect(await on(one)).toEqual(before);
  });

  test('two presses take a file in once, and one takes it back out', async () => {
    const one = aDevice();
    const { model } = page(one);
    await model.choose(file(aBundle));
    await Promise.all([model.take(), model.take()]);
    expect(await on(one)).toEqual(contentOf(aBundle));
    await Promise.all([model.undo(), model.undo()]);
    expect(model.done.value).toBe('undone');
    expect((await on(one)).answers).toEqual([]);
  });

  test('what is lost is said as it is chosen', async () => {
    const here = { ...aBundle, plan: { exam: '2027-06-01', minutes: 20 as const, round: null } };
    const { model } = page(await filled(here));
    await model.choose(file(aBundle));
    const said = () => {
      const [opened, sides] = [model.opened.value, model.sides.value];
      return opened && sides && lossesOf(opened, sides);
    };
    expect(said()).toEqual([]);
    model.setSide('plan', 'file');
    expect(said()).toEqual(['Your plan: exam on Jun 1, 2027, rounds of 20 minutes.']);
    const opened = model.opened.value;
    expect(opened && rowsOf(opened.compared)).toContainEqual(['Answers', '3 are the same on both']);
  });

  test('a rehearsal under way that gives way is told with what it holds', async () => {
    const [first, other] = [1_795_000_000_001, 1_795_000_000_002].map((begun) => ({
      rehearsal: { ...(aBundle.rehearsal?.rehearsal as Rehearsal), begun },
    }));
    const { model } = page(await filled({ ...aBundle, rehearsal: first ?? null }));
    await model.choose(file({ ...aBundle, rehearsal: other ?? null }));
    const opened = model.opened.value;
    if (opened === undefined || model.sides.value === undefined)
      throw new Error('Nothing is open.');
    expect(opened.toChoose).toEqual(['rehearsal']);
    expect(rowsOf(opened.compared)).toEqual(
      expect.arrayContaining([
        ['Rehearsal under way', 'differs: choose below'],
        ['Rehearsals handed in', '1 is the same on both'],
      ]),
    );
    expect(lossesOf(opened, model.sides.value)).toEqual([]);
    model.setSide('rehearsal', 'file');
    // November 18, 2026, 11:06 in Greenwich.
    expect(lossesOf(opened, model.sides.value)).toEqual([
      'A rehearsal under way, begun on Nov 18, 2026, with 2 of 3 questions answered.',
    ]);
  });

  test('what reads the device did not load: said, and asked for again', async () => {
    let tries = 0;
    const { model } = page(aDevice(), () => {
      tries += 1;
      return tries === 1 ? Promise.reject(new Error('offline')) : Promise.resolve(stores);
    });
    await model.look();
    expect(model.stuck.value).toBe(true);
    await model.look();
    expect([model.stuck.value, model.isEmpty.value]).toEqual([false, true]);
  });

  test('every part is told of, also an exam on a day that is none', () => {
    expect(factsOf(emptyBundle)).toEqual([]);
    const facts = factsOf(aBundle, 2);
    expect(facts).toHaveLength(13);
    expect(facts).toContain('1 meeting of your own');
    // 1,795,942,800,000 ms of Unix time are November 29, 2026, 9:00 in Greenwich.
    expect(facts).toContain(
      'A rehearsal under way, begun on Nov 29, 2026, with 2 of 3 questions answered',
    );
    expect(facts).toContain('1 rehearsal handed in');
    const odd = { ...emptyBundle, plan: { exam: '2026-99-99', minutes: 5 as const, round: null } };
    expect(factsOf(odd)).toEqual(['Your plan: exam on 2026-99-99, rounds of 5 minutes']);
  });
});
