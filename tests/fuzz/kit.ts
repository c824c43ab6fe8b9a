/**
 * Random input by the thousand, from one kept seed. Whatever comes, a reader ends: with something in range or with a sentence.
 * What every object inherits from is looked at afterwards, and nothing that was read may have parents of its own.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';

export const SEED = 20_261_129;
const COMMAND = 'npm run quality -- fuzz';
/** A sentence ends, and shows nothing that a program prints when it was handed nothing. */
const SENTENCE = /^\S[^]{9,}[.?!)”]$/u;
const LEAKED = /undefined|\[object|\bNaN\b|ZodError|Cannot read|is not a function/;

export function expectSentence(text: string): void {
  expect(text).toMatch(SENTENCE);
  // What was typed may be quoted, whatever it is.
  expect(text.replaceAll(/“[^]*?”/gu, '')).not.toMatch(LEAKED);
}

const shared = [Object, Array, Function, String, Number, Map, Set, Promise, RegExp];
const inherited = (): string =>
  shared
    .flatMap(({ prototype }) => Reflect.ownKeys(prototype as object))
    .map(String)
    .join();

const PLAIN = new Set<object | null>([
  null,
  ...[Object, Array, Map, Set, Float64Array, Uint16Array].map(
    ({ prototype }) => prototype as object,
  ),
]);
/** Nothing in what was read inherits from what the input said. */
export function expectPlain(value: unknown): void {
  if (typeof value !== 'object' || value === null) return;
  if (!PLAIN.has(Object.getPrototypeOf(value) as object | null))
    throw new Error('What was read has a parent that came from the input.');
  if (ArrayBuffer.isView(value)) return;
  const inner = value instanceof Map ? [...value.values()] : Object.values(value);
  for (const one of inner) expectPlain(one);
}

const figures: object[] = [];
const keep = (what: string, value: number | string, bar: number | string, met: boolean): void => {
  figures.push({ what, value, bar, met, command: COMMAND });
};

export function fuzz<Input>(
  what: string,
  runs: number,
  input: fc.Arbitrary<Input>,
  read: (input: Input) => void | Promise<void>,
): void {
  test(
    `${what}, ${runs} times`,
    async () => {
      const before = inherited();
      let ended = 0;
      const property = fc.asyncProperty(input, async (one) => {
        const reading = read(one);
        if (reading !== undefined) await reading;
        ended += 1;
      });
      await fc.assert(property, { numRuns: runs, seed: SEED });
      expect(inherited()).toBe(before);
      expect(Reflect.get({}, 'polluted')).toBeUndefined();
      keep(what, ended, runs, ended >= runs);
    },
    // A slow machine is no fault.
    600_000,
  );
}

const cpu = (work: () => void): number => {
  const began = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1000;
};
/** Eight times the input may take eight times the work, not 64; caches and collecting take their share. */
const LONGER = 8;
const MOST = 24;

/** How the work grows with the input, by the least of five turns each. */
export function growth(
  what: string,
  n: number,
  cases: Readonly<Record<string, (n: number) => () => void>>,
): void {
  test(
    what,
    () => {
      let worst = 0;
      for (const [name, make] of Object.entries(cases)) {
        const least = (size: number): number => {
          const work = make(size);
          return Math.min(...Array.from({ length: 5 }, () => cpu(work)));
        };
        // The first turns run code that is not compiled yet.
        least(n);
        // Below a millisecond the clock of the processor is too coarse.
        const ratio = least(LONGER * n) / Math.max(least(n), 1);
        expect(ratio, name).toBeLessThan(MOST);
        worst = Math.max(worst, ratio);
      }
      const bar = `less than ${MOST} times the work`;
      keep(`${what}: ${LONGER} times as long`, `${worst.toFixed(1)} times the work`, bar, true);
    },
    120_000,
  );
}

/** To be called once in a file of tests. */
export function leaveFigures(name: string): void {
  afterAll(() => {
    mkdirSync('test-results/quality', { recursive: true });
    writeFileSync(
      `test-results/quality/fuzz-${name}.json`,
      JSON.stringify({ name: 'fuzz', figures }),
    );
  });
}
