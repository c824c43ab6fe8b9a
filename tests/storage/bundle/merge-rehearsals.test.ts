import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { writeBundle, type Bundle } from '../../../src/storage/bundle/bundle.ts';
import { bringsNothing, compare, toChoose } from '../../../src/storage/bundle/compare.ts';
import { gather } from '../../../src/storage/bundle/device.ts';
import { readBundle } from '../../../src/storage/bundle/read-bundle.ts';
import { allFile, allHere, takeIn } from '../../../src/storage/bundle/take-in.ts';
import type { Rehearsal } from '../../../src/storage/rehearsals.ts';
import { emptyBundle } from './a-bundle.ts';
import { aDevice, filled, NOW, on } from './a-device.ts';

afterEach(() => vi.unstubAllGlobals());

const items = [
  { id: 'a', lesson: 'l', area: 'fluid', variant: 'b' },
  { id: 'c', lesson: 'l', area: 'tests' },
];
const answered = [{ ...items[0], given: { kind: 'chosen', ids: ['x'] }, certainty: 2 }, items[1]];
const underWay = (begun: number, over: object = {}): Rehearsal => ({
  ...{ begun, ended: null, seconds: 5, timed: true, place: 0, logged: false, items },
  ...over,
});
const over = (begun: number, more: object = {}): Rehearsal =>
  underWay(begun, { ended: begun + 1000, logged: true, ...more });
const kept = (one: Rehearsal | null, past: readonly Rehearsal[] = []): Bundle => ({
  ...emptyBundle,
  rehearsal: one && { rehearsal: one },
  rehearsed: past.length === 0 ? null : { rehearsals: past },
});
const begunIn = ({ rehearsal, rehearsed }: Bundle) => [
  rehearsal?.rehearsal?.begun ?? null,
  (rehearsed?.rehearsals ?? []).map(({ begun }) => begun),
];
const compared = (here: Bundle, file: Bundle) => compare(here, file, NOW);

test('a rehearsal under way goes to another device with every answer, and so do those handed in', async () => {
  const all = kept(underWay(30, { items: answered, place: 1 }), [over(20), over(10)]);
  const read = readBundle(writeBundle(all));
  expect(read).toEqual({ ok: true, bundle: all });
  const one = await filled(all);
  expect(await on(one)).toEqual(all);
});

test('what was made before there were any has none, and takes none away', async () => {
  const text = writeBundle(emptyBundle);
  expect(text).not.toContain('rehears');
  const read = readBundle(text);
  const all = kept(underWay(30), [over(20)]);
  const one = await filled(all);
  if (read.ok) await takeIn(one.device, read.bundle, allFile);
  expect(await on(one)).toEqual(all);
  expect(compared(all, emptyBundle)).toMatchObject({
    rehearsal: 'hereOnly',
    rehearsed: { hereOnly: ['20'] },
  });
});

describe('two devices with rehearsals', () => {
  test.each([
    ['nothing on either', null, null, 'neither', null],
    ['one in the file', null, underWay(2), 'added', 2],
    ['one here', underWay(1), null, 'hereOnly', 1],
    ['the same', underWay(1), underWay(1), 'same', 1],
    ['the same, further on', underWay(1), underWay(1, { items: answered }), 'differs', 1],
    ['two', underWay(1), underWay(2), 'differs', 1],
  ] as const)('%s', async (_, here, file, said, left) => {
    expect(compared(kept(here), kept(file)).rehearsal).toBe(said);
    const one = await filled(kept(here));
    await takeIn(one.device, kept(file), allHere);
    expect(begunIn(await on(one))).toEqual([left, []]);
    if (said !== 'differs') return;
    expect(toChoose(compared(kept(here), kept(file)))).toEqual(['rehearsal']);
    const { undo } = await takeIn(one.device, kept(file), allFile);
    expect((await on(one)).rehearsal).toEqual(kept(file).rehearsal);
    await undo();
    expect((await on(one)).rehearsal).toEqual(kept(here).rehearsal);
  });

  test('one that was handed in here does not come back to life from an older file', async () => {
    const [here, file] = [kept(null, [over(1)]), kept(underWay(1))];
    expect(bringsNothing(compared(here, file))).toBe(true);
    const one = await filled(here);
    await takeIn(one.device, file, allFile);
    expect(begunIn(await on(one))).toEqual([null, [1]]);
  });

  test('one that is under way here and was handed in there is over only if that is chosen', async () => {
    const [here, file] = [kept(underWay(1)), kept(null, [over(1)])];
    expect(toChoose(compared(here, file))).toEqual(['rehearsal']);
    const one = await filled(here);
    await takeIn(one.device, file, allHere);
    expect(begunIn(await on(one))).toEqual([1, [1]]);
    await takeIn(one.device, file, allFile);
    expect(begunIn(await on(one))).toEqual([null, [1]]);
  });

  test('those handed in stand together, the latest first, and none twice', async () => {
    const [here, file] = [kept(null, [over(5), over(1)]), kept(null, [over(9), over(5), over(3)])];
    expect(compared(here, file).rehearsed).toEqual({
      ...{ added: ['3', '9'], same: ['5'], differ: [], hereOnly: ['1'], dropped: 0 },
    });
    const one = await filled(here);
    const { undo } = await takeIn(one.device, file, allHere);
    expect(begunIn(await on(one))).toEqual([null, [9, 5, 3, 1]]);
    expect(bringsNothing(compared(await on(one), file))).toBe(true);
    await undo();
    expect(begunIn(await on(one))).toEqual([null, [5, 1]]);
  });

  test('more than are remembered: how many go is said before', async () => {
    const many = (from: number) => Array.from({ length: 15 }, (_, i) => over(from - i));
    const [here, file] = [kept(null, many(100)), kept(null, many(200))];
    // The list holds 20.
    expect(compared(here, file).rehearsed.dropped).toBe(10);
    const one = await filled(here);
    await takeIn(one.device, file, allHere);
    expect((await on(one)).rehearsed?.rehearsals.at(-1)?.begun).toBe(96);
  });

  test('that its answers are in the log on one of them counts, and is no difference', async () => {
    const [here, file] = [kept(null, [over(1, { logged: false })]), kept(null, [over(1)])];
    expect(compared(here, file).rehearsed).toMatchObject({ same: ['1'], differ: [] });
    const one = await filled(here);
    await takeIn(one.device, file, allHere);
    expect((await on(one)).rehearsed?.rehearsals).toEqual([over(1)]);
  });
});

test('a result that waits to be filed is in the file as handed in, and nothing takes its place', async () => {
  const one = aDevice();
  one.device.keepers.rehearsal.update(() => ({ rehearsal: over(7, { logged: false }) }));
  const { bundle } = await gather(one.device);
  expect(begunIn(bundle)).toEqual([null, [7]]);
  await takeIn(one.device, kept(underWay(9)), allFile);
  expect(begunIn(await on(one))).toEqual([null, [7]]);
});

test('one that was handed in on two phones counts each answer once, and a second time nothing', async () => {
  const answers = (at: number): Bundle['answers'] =>
    ['a', 'c'].map((item, i) => ({
      at: at + i,
      answer: {
        ...{ kind: 'retrieval', lesson: 'l', item, seed: 30, result: 'right', certainty: 2 },
        given: { kind: 'chosen', ids: ['x'] },
      },
    }));
  const here = { ...kept(null, [over(30)]), answers: answers(NOW - 5000) };
  const file = { ...kept(null, [over(30, { ended: 60_000 })]), answers: answers(NOW - 1000) };
  expect(compared(here, file).answers).toMatchObject({ added: 0, same: 2, hereOnly: 0 });
  const one = await filled(here);
  await takeIn(one.device, file, allFile);
  expect((await on(one)).answers).toEqual(here.answers);
  // A phone that has nothing of it yet takes it whole.
  const fresh = await filled(file);
  expect((await on(fresh)).answers).toEqual(file.answers);
});
