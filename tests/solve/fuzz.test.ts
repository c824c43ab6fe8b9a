import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FAULT_IDS } from '../../src/engine/index.ts';
import { answerAll } from '../../src/solve/answer.ts';
import { parseRequests } from '../../src/solve/read-requests.ts';
import { requestSchemas } from '../../src/solve/request-schema.ts';

const runs = { seed: 20_240_611, numRuns: 1000 };

/** One good request of every kind, all optional keys in it. */
const sheet = { pump: { slip: 5e-8 }, clutches: { high: { faces: 8 } }, fluid: 'ultra-low' };
const faults = { transferSeal: 0.3, openPort: { severity: 0.2, circuit: 'high' } };
const GOOD: readonly Readonly<Record<string, unknown>>[] = [
  {
    kind: 'fluid',
    fluid: { kv40_cSt: 34, kv100_cSt: 7, density15_kgm3: 850 },
    temperature_C: [20, 100],
  },
  {
    kind: 'gap',
    fluid: 'standard',
    temperature_C: 40,
    pressure_kPa: 400,
    width_mm: 14,
    height_mm: 0.1,
    length_mm: 3,
  },
  {
    kind: 'steady',
    temperature_C: 90,
    engine_rpm: 700,
    line_kPa: 600,
    clutch_kPa: 400,
    applied: ['forward', 'high'],
    faults,
    transmission: sheet,
  },
  { kind: 'airTest', circuit: 'forward', faults, transmission: sheet },
  {
    kind: 'engagement',
    temperature_C: 90,
    rangeSelection: 'electronic',
    range: 'drive',
    faults,
    transmission: sheet,
  },
];

type Path = readonly (string | number)[];
function pathsIn(value: unknown, at: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [at];
  return [at, ...Object.entries(value).flatMap(([key, inner]) => pathsIn(inner, [...at, key]))];
}

/** The value with what stands at a path replaced; undefined takes it away. */
function replaced(value: unknown, path: Path, by: unknown): unknown {
  const [first, ...rest] = path;
  if (first === undefined) return by;
  if (Array.isArray(value)) {
    return value.map((inner, i) =>
      String(i) === first ? replaced(inner, rest, by) : (inner as unknown),
    );
  }
  const before = value as Record<string, unknown>;
  return { ...before, [first]: replaced(before[first], rest, by) };
}

const odd = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    true,
    '',
    'forward',
    [],
    {},
    -1,
    0,
    -0,
    1e-320,
    1e308,
    140,
    0.5,
    '__proto__',
  ),
  fc.double(),
  fc.jsonValue({ maxDepth: 3 }),
  fc.constantFrom(...FAULT_IDS).map((id) => ({ [id]: 1 })),
);
const bent = fc.constantFrom(...GOOD).chain((good) =>
  fc
    .array(fc.tuple(fc.constantFrom(...pathsIn(good).filter((path) => path.length > 0)), odd), {
      minLength: 1,
      maxLength: 2,
    })
    .map((changes) =>
      changes.reduce<unknown>((request, [path, by]) => {
        try {
          return replaced(request, path, by);
        } catch {
          return request; // The first change took away what the second would change.
        }
      }, good),
    ),
);
const withAKeyMore = fc
  .tuple(fc.constantFrom(...GOOD), fc.string({ unit: 'binary' }), odd)
  .map(([good, key, value]) => ({ ...good, [key]: value }));

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

const keysOf = (kind: unknown): readonly string[] =>
  Object.keys(
    (requestSchemas as Readonly<Record<string, { shape: object }>>)[String(kind)]?.shape ?? {
      kind: 0,
    },
  );

/** Answers, or sentences with the path of a key the request has or could have; no other end. */
function mustAnswer(text: string): void {
  const given = parseRequests('Here', text);
  if ('error' in given) {
    expect(given.error).toMatch(/^Here (is|cannot).{1,300}\.$/su);
    return;
  }
  const requests = (Array.isArray(given.requests) ? given.requests : [given.requests]) as unknown[];
  const { answers, refused } = answerAll(given.requests);
  expect(answers).toHaveLength(requests.length);
  expect(refused).toBe(answers.some((one) => 'error' in one));
  answers.forEach((one, index) => {
    // JSON has no NaN and no Infinity: what is written out must be what was meant.
    expect(numbersIn(one).every(Number.isFinite)).toBe(true);
    if (!('error' in one)) return;
    const { error, path } = one as { error: string; path: string };
    expect(error).toMatch(/^\S.{5,1500}\.$/su);
    expect(error).not.toMatch(/undefined|\[object|Invalid input|ZodError|NaN|its fault/);
    const request = requests[index];
    if (path === '') return;
    const own = Object.keys(request as object).map((key) => Array.from(key).slice(0, 37).join(''));
    const known = [...keysOf((request as { kind?: unknown }).kind), ...own];
    expect(
      known.some((key) => path.startsWith(key)),
      `${path} of ${text}`,
    ).toBe(true);
  });
}

describe('five thousand inputs, none of them good on purpose', { timeout: 60_000 }, () => {
  it('any JSON', () => {
    fc.assert(fc.property(fc.json({ maxDepth: 6 }), mustAnswer), runs);
  });
  it('any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), mustAnswer), runs);
  });
  it('good requests with something in them changed', () => {
    fc.assert(
      fc.property(fc.array(bent, { minLength: 1, maxLength: 2 }), (list) => {
        mustAnswer(JSON.stringify(list));
      }),
      runs,
    );
  });
  it('good requests with a key more', () => {
    fc.assert(
      fc.property(withAKeyMore, (request) => {
        mustAnswer(JSON.stringify(request));
      }),
      runs,
    );
  });
  it('good requests cut off, doubled or with a number blown up', () => {
    const text = fc.constantFrom(...GOOD).map((good) => JSON.stringify(good));
    const at = fc.integer({ min: 0, max: 400 });
    fc.assert(
      fc.property(
        text,
        at,
        fc.constantFrom('', ',', '1e999', '[', '}', '"', '\\u0000', '\uFEFF', '-'),
        (whole, cutAt, put) => {
          mustAnswer(whole.slice(0, cutAt) + put + whole.slice(cutAt + put.length));
        },
      ),
      runs,
    );
  });
});
