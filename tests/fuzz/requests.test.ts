/** What is asked of the command line, `npm run solve`: any text, any JSON, and good requests with something wrong in them. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { answer, answerAll } from '../../src/solve/answer.ts';
import { parseRequests } from '../../src/solve/read-requests.ts';
import { damaged, inText } from './damage.ts';
import { expectPlain, expectSentence, fuzz, growth, leaveFigures } from './kit.ts';

leaveFigures('requests');

const faults = { transferSeal: 0.3, openPort: { severity: 0.2, circuit: 'high' } };
const sheet = { pump: { slip: 5e-8 }, clutches: { high: { faces: 8 } }, fluid: 'ultra-low' };
const cheap = [
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
].map((one) => JSON.stringify(one));
/** These solve a whole drive, or weigh every fault: a hundred times the work. */
const dear = [
  {
    kind: 'engagement',
    temperature_C: 90,
    rangeSelection: 'electronic',
    range: 'drive',
    faults,
    transmission: sheet,
  },
  {
    kind: 'diagnosis',
    readings: [
      { test: 'stopTime', range: 'drive', temperature_C: 95, value: 1.2 },
      { test: 'takeoffSlip', range: 'drive', temperature_C: 95, value: 40 },
    ],
  },
].map((one) => JSON.stringify(one));

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

/** Answers with numbers that are numbers, or sentences; no other end. */
function mustAnswer(text: string): void {
  const given = parseRequests('Here', text);
  if ('error' in given) {
    expectSentence(given.error);
    return;
  }
  const { answers } = answerAll(given.requests);
  for (const one of answers) {
    expectPlain(one);
    expect(numbersIn(one).every(Number.isFinite)).toBe(true);
    if (!('error' in one)) continue;
    const said = String(one['error']);
    expect(said).toMatch(/^\S[^]{9,}\.$/u);
    expect(said).not.toMatch(/its fault/);
  }
}

test('undamaged, each is answered', () => {
  for (const text of [...cheap, ...dear]) {
    expect(answerAll(JSON.parse(text) as unknown).refused, text).toBe(false);
  }
});

const any = fc.oneof(fc.constantFrom(...cheap).chain(damaged), fc.json({ maxDepth: 6 }));
fuzz('Requests to the model', 18_000, any, mustAnswer);
fuzz(
  'Requests to the model as any text',
  4000,
  fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom(...cheap).chain(inText)),
  mustAnswer,
);
fuzz(
  'Requests for a whole drive or a diagnosis',
  600,
  fc.constantFrom(...dear).chain(damaged),
  mustAnswer,
);

growth('The longest request', 100, {
  list: (n) => () => mustAnswer(`[${Array.from({ length: n }, () => cheap[1]).join(',')}]`),
  brackets: (n) => () => mustAnswer(`${'['.repeat(n * 500)}${']'.repeat(n * 500)}`),
  temperatures: (n) => () =>
    void answer({ kind: 'fluid', fluid: 'standard', temperature_C: Array(n * 50).fill(20) }),
  text: (n) => () => mustAnswer(`"${'\\u0041'.repeat(n * 500)}"`),
});
