import 'fake-indexeddb/auto';
import * as fc from 'fast-check';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { writeBundle } from '../../../src/storage/bundle/bundle.ts';
import { compare } from '../../../src/storage/bundle/compare.ts';
import { gather } from '../../../src/storage/bundle/device.ts';
import { readBundle } from '../../../src/storage/bundle/read-bundle.ts';
import { allFile, takeIn } from '../../../src/storage/bundle/take-in.ts';
import { aBundle } from './a-bundle.ts';
import { aDevice, close, filled, NOW, on, type TestDevice } from './a-device.ts';

const FILES = 10_000;
/** Of the damaged files that can be read all the same, so many are taken in on a device of their own. */
const TAKEN_IN = 150;

const good = writeBundle(aBundle);

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
const odd: readonly Json[] = [
  null,
  true,
  '',
  'x',
  -1,
  0.5,
  1e308,
  [],
  {},
  [[]],
  { at: 1, value: 1 },
  '__proto__',
  'constructor',
  '\u0000',
  '\ud800',
];
const keys = ['__proto__', 'constructor', 'toString', 'length', 'v', 'at', 'data', ''];

/** Every place in a value, as the holder and the key in it. */
function places(value: Json): [Record<string, Json>, string][] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, Json>;
  return Object.keys(holder).flatMap((key) => [
    [holder, key] as [Record<string, Json>, string],
    ...places(holder[key] ?? null),
  ]);
}

const where = fc.noBias(fc.integer({ min: 0, max: 9999 })).map((n) => n / 10_000);
const pick = <One>(all: readonly One[], at: number): One | undefined =>
  all[Math.floor(at * all.length)];

/** Damage to the text, as a disk or a mail program does it. */
const inText = fc
  .array(
    fc.record({
      how: fc.constantFrom('cut', 'drop', 'flip', 'insert', 'double', 'swap'),
      at: where,
      length: fc.noBias(fc.integer({ min: 1, max: 60 })),
      text: fc.oneof(
        fc.string({ maxLength: 6 }),
        fc.constantFrom('{', '}', '[', ']', '"', ',', ':', '0', 'e', '-'),
      ),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((changes) =>
    changes.reduce((text, { how, at, length, text: given }) => {
      const from = Math.floor(at * text.length);
      const [before, piece, after] = [
        text.slice(0, from),
        text.slice(from, from + length),
        text.slice(from + length),
      ];
      if (how === 'cut') return before;
      if (how === 'drop') return before + after;
      if (how === 'insert') return before + given + piece + after;
      if (how === 'double') return before + piece + piece + after;
      if (how === 'swap') return after + piece + before;
      const flipped = String.fromCharCode((text.charCodeAt(from) || 0) ^ (1 << (length % 7)));
      return before + flipped + text.slice(from + 1);
    }, good),
  );

/** Damage to what it says, as somebody does it by hand. */
const inData = fc
  .array(
    fc.record({
      how: fc.constantFrom('replace', 'remove', 'rename', 'add', 'copy'),
      at: where,
      from: where,
      value: fc.oneof(fc.constantFrom(...odd), fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<Json>),
      key: fc.constantFrom(...keys),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .map((changes) => {
    const data = JSON.parse(good) as Json;
    for (const { how, at, from, value, key } of changes) {
      const all = places(data);
      const [holder, name] = pick(all, at) ?? [];
      const [other, otherName] = pick(all, from) ?? [];
      if (holder === undefined || name === undefined) break;
      const own = holder[name] ?? null;
      if (how === 'replace') holder[name] = structuredClone(value);
      if (how === 'remove' || how === 'rename') Reflect.deleteProperty(holder, name);
      if (how === 'rename' || how === 'add')
        Object.defineProperty(Array.isArray(holder) ? {} : holder, key, {
          value: how === 'add' ? structuredClone(value) : own,
          enumerable: true,
          configurable: true,
          writable: true,
        });
      if (how === 'copy' && other && otherName !== undefined)
        holder[name] = structuredClone(other[otherName] ?? null);
    }
    return JSON.stringify(data);
  });

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
    fc.property(fc.oneof(inText, inData), (text) => {
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
