import 'fake-indexeddb/auto';
import * as fc from 'fast-check';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { writeBundle } from '../../../src/storage/bundle/bundle.ts';
import { compare } from '../../../src/storage/bundle/compare.ts';
import { gather } from '../../../src/storage/bundle/device.ts';
import { readBundle } from '../../../src/storage/bundle/read-bundle.ts';
import { allFile, takeIn } from '../../../src/storage/bundle/take-in.ts';
import { inData, inText } from '../../fuzz/damage.ts';
import { aBundle } from './a-bundle.ts';
import { aDevice, close, filled, NOW, on, type TestDevice } from './a-device.ts';

const FILES = 10_000;
/** Of the damaged files that can be read all the same, so many are taken in on a device of their own. */
const TAKEN_IN = 150;

const good = writeBundle(aBundle);

let one: TestDevice;
beforeAll(async () => {
  one = await filled(aBundle);
});
afterAll(async () => {
  await close(one);
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('10,000 damaged files: none throws, none changes the store, each is refused in words or compared', async () => {
  const before = await on(one);
  const stored = new Map(one.area.kept);
  const writes = (['put', 'add', 'delete', 'clear'] as const).map((name) =>
    vi.spyOn(IDBObjectStore.prototype, name),
  );
  const { bundle } = await gather(one.device);
  const readable: string[] = [];
  const said = new Map<string, number>();
  fc.assert(
    fc.property(fc.oneof(inText(good), inData(good)), (text) => {
      const read = readBundle(text);
      if (read.ok) {
        compare(bundle, read.bundle, NOW);
        readable.push(text);
        return;
      }
      expect(read.sentence).toMatch(/^[A-Z].{30,}\.$/u);
      const kind = read.sentence.replaceAll(/\d+|“.*?”/gu, '#');
      said.set(kind, (said.get(kind) ?? 0) + 1);
    }),
    { numRuns: FILES, seed: 20_261_129 },
  );
  for (const spy of writes) expect(spy).not.toHaveBeenCalled();
  for (const spy of writes) spy.mockRestore();
  expect(one.area.kept).toEqual(stored);
  expect(await on(one)).toEqual(before);
  expect(Reflect.get(Object.prototype, 'at')).toBeUndefined();
  // The damage is of many kinds, and some of it leaves a file that is good.
  expect(said.size).toBeGreaterThan(15);
  expect(readable.length).toBeGreaterThan(200);
  expect(readable.length).toBeLessThan(FILES / 3);

  // What can be read is sound: taken in, everything that comes back is read again.
  for (const text of readable.slice(0, TAKEN_IN)) {
    const read = readBundle(text);
    if (!read.ok) throw new Error(read.sentence);
    const fresh = aDevice();
    expect((await takeIn(fresh.device, read.bundle, allFile)).faults).toEqual({});
    const { unreadable, bundle: there } = await gather(fresh.device);
    expect(unreadable).toBe(0);
    expect(there.answers).toHaveLength(read.bundle.answers.length);
    await close(fresh);
  }
});
