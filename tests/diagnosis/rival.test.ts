/**
 * The planner against an independent program: tests/truth/diagnosis.py, written from the papers alone (its README says how
 * they were read). Probabilities to 0.01. Severities come at steps of 0.025 here and between them there: 0.03. What a test tells to 0.03 bits
 * or a tenth: hypotheses under 1e-4 are left out here and counted there, and the shipped table is rounded.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/solve/answer.ts';

interface Proposed {
  readonly bits: number;
  readonly minutes: number;
}
interface Crack {
  readonly height_mm: readonly number[];
  readonly width_mm: readonly number[];
  readonly leak_Lmin: readonly number[];
  readonly correlation: number;
  readonly width_height2_mm3: number;
}
interface Told {
  readonly faults: readonly {
    readonly fault: string;
    readonly probability: number;
    readonly circuits?: Readonly<Record<string, number>>;
    readonly severity?: readonly number[];
  }[];
  readonly next: readonly (Readonly<Record<string, unknown>> & Proposed)[];
  readonly fit: {
    readonly d2: number;
    readonly readings: number;
    readonly p: number | null;
    readonly singleFaultFits?: boolean;
  };
  readonly leak?: Crack & { readonly sdLnWidth: number; readonly apart: boolean };
  readonly leakFinerGrid?: Crack;
}
const frozen = JSON.parse(readFileSync('tests/truth/diagnosis.json', 'utf8')) as readonly {
  readonly name: string;
  readonly request: { readonly readings: readonly { readonly test: string }[] };
  readonly answer: Told;
}[];

const nameOf = (one: Told['next'][number]): string =>
  JSON.stringify(
    Object.entries(one)
      .filter(([key]) => key !== 'bits' && key !== 'minutes')
      .sort(),
  );
const off = (a: number | undefined, b: number): number => Math.abs((a ?? NaN) - b);

test('every kind of reading and both training transmissions are asked about', () => {
  expect(frozen.length).toBeGreaterThanOrEqual(30);
  const kinds = new Set(frozen.flatMap(({ request }) => request.readings.map((one) => one.test)));
  expect(kinds.size).toBe(17);
  expect(frozen.filter(({ request }) => 'transmission' in request).length).toBeGreaterThan(3);
  expect(frozen.filter(({ answer: told }) => told.leak).length).toBeGreaterThan(3);
});

describe.each(frozen)('$name', { timeout: 60_000 }, ({ request, answer: told }) => {
  let asked: Told | undefined;
  const mine = (): Told => (asked ??= answer(request) as unknown as Told);

  test('probabilities within 0.01', () => {
    for (const { fault, probability, circuits = {} } of told.faults) {
      const here = mine().faults.find((one) => one.fault === fault);
      expect(off(here?.probability, probability), fault).toBeLessThanOrEqual(0.01);
      for (const [circuit, share] of Object.entries(circuits)) {
        expect(off(here?.circuits?.[circuit], share), `${fault} ${circuit}`).toBeLessThanOrEqual(
          0.01,
        );
      }
    }
  });

  test('severities of the likely within 0.03', () => {
    for (const { fault, severity, probability } of told.faults) {
      if (probability < 0.05) continue;
      const here = mine().faults.find((one) => one.fault === fault);
      severity?.forEach((point, i) => {
        expect(off(here?.severity?.[i], point), fault).toBeLessThanOrEqual(0.03);
      });
    }
  });

  test('what each test tells, and its minutes', () => {
    const here = new Map(mine().next.map((one) => [nameOf(one), one]));
    const there = new Map(told.next.map((one) => [nameOf(one), one]));
    for (const name of new Set([...here.keys(), ...there.keys()])) {
      // One that is not listed tells less than 0.03.
      const bits = there.get(name)?.bits ?? 0.03;
      expect(off(here.get(name)?.bits ?? 0.03, bits), name).toBeLessThanOrEqual(
        Math.max(0.03, 0.1 * bits),
      );
      if (here.has(name) && there.has(name)) {
        expect(here.get(name)?.minutes, name).toBe(there.get(name)?.minutes);
      }
    }
  });

  test('how well one fault fits', () => {
    const { fit } = mine();
    expect(fit.readings).toBe(told.fit.readings);
    expect(fit.singleFaultFits).toBe(told.fit.singleFaultFits);
    expect(off(fit.d2, told.fit.d2)).toBeLessThanOrEqual(Math.max(0.1, 0.03 * told.fit.d2));
  });

  test('the crack', () => {
    const { leak } = mine();
    expect(leak === undefined).toBe(told.leak === undefined);
    if (!leak || !told.leak) return;
    expect(off(leak.correlation, told.leak.correlation)).toBeLessThan(1e-3);
    expect(leak.apart).toBe(told.leak.sdLnWidth <= 0.25);
    // A step of the grid: 0.01 mm of height, a tenth of width. The finer grid is to say the same.
    for (const grid of [told.leak, told.leakFinerGrid ?? told.leak]) {
      leak.height_mm.forEach((point, i) => {
        expect(off(point, grid.height_mm[i] ?? NaN)).toBeLessThanOrEqual(0.0101);
      });
      leak.width_mm.forEach((point, i) => {
        expect(off(point / (grid.width_mm[i] ?? NaN), 1)).toBeLessThanOrEqual(0.106);
      });
      leak.leak_Lmin.forEach((point, i) => {
        expect(off(point / (grid.leak_Lmin[i] ?? NaN), 1)).toBeLessThanOrEqual(0.02);
      });
      expect(off(leak.width_height2_mm3 / grid.width_height2_mm3, 1)).toBeLessThanOrEqual(0.03);
    }
  });
});

test('a sheet that is none is refused at its place, and with a question as with any request', () => {
  const ask = (transmission: unknown) => answer({ kind: 'diagnosis', readings: [], transmission });
  expect(ask({ pump: { displacement_cm3: -1 } })).toMatchObject({
    path: 'transmission.pump.displacement_cm3',
  });
  expect(ask({ pumps: {} })).toMatchObject({ path: 'transmission.pumps' });
  // The training transmission's own numbers are no other transmission.
  expect(ask({ pump: { displacement_cm3: 17 } })).toEqual(
    answer({ kind: 'diagnosis', readings: [] }),
  );
});
