/** Damage to a file: to its text, as a disk or a mail program does it, and to what it says, as somebody does it by hand. */
import * as fc from 'fast-check';

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

export const inText = (good: string): fc.Arbitrary<string> =>
  fc
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

export const inData = (good: string): fc.Arbitrary<string> =>
  fc
    .array(
      fc.record({
        how: fc.constantFrom('replace', 'remove', 'rename', 'add', 'copy'),
        at: where,
        from: where,
        value: fc.oneof(
          fc.constantFrom(...odd),
          fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<Json>,
        ),
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

/** Either, and a key that would reach what all objects share wherever a reader copies without looking. */
export const damaged = (good: string): fc.Arbitrary<string> =>
  fc.oneof(
    { arbitrary: inText(good), weight: 4 },
    { arbitrary: inData(good), weight: 4 },
    { arbitrary: fc.json({ maxDepth: 4 }), weight: 1 },
    {
      weight: 1,
      arbitrary: fc
        .tuple(
          fc.constantFrom('"__proto__"', '"constructor"', '"\\u005f_proto__"'),
          fc.constantFrom('{"polluted":true}', '{"prototype":{"polluted":true}}', 'null'),
          where,
        )
        .map(([key, value, at]) => {
          const braces = [...good.matchAll(/\{(?=\s*")/g)].map(({ index }) => index + 1);
          const place = pick(braces, at) ?? 1;
          return `${good.slice(0, place)}${key}:${value},${good.slice(place)}`;
        }),
    },
  );
