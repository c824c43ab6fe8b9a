import { describe, expect, it } from 'vitest';
import { answer, answerAll } from '../../src/solve/answer.ts';
import type { Answer } from '../../src/solve/answer.ts';

const steady = {
  kind: 'steady',
  temperature_C: 90,
  engine_rpm: 700,
  line_kPa: 600,
  clutch_kPa: 400,
  applied: ['forward'],
};
const pair = { kv40_cSt: 34.5, kv100_cSt: 7.4, density15_kgm3: 850 };

function valuesOf(given: Answer): Readonly<Record<string, unknown>> {
  if ('error' in given) throw new Error(String(given.error));
  return given;
}

describe('fluid', () => {
  it('answers three arrays, one entry a temperature, in the order asked', () => {
    const got = valuesOf(answer({ kind: 'fluid', fluid: pair, temperature_C: [20, 100] }));
    expect(Object.keys(got)).toEqual(['kinematic_cSt', 'dynamic_mPas', 'density_kgm3']);
    // ASTM D341 and API MPMS 11.1, worked out by an independent program to five figures.
    const [cold, hot] = got.kinematic_cSt as number[];
    expect(cold).toBeCloseTo(76.836, 2);
    expect(hot).toBeCloseTo(7.4, 3);
    expect((got.dynamic_mPas as number[])[0]).toBeCloseTo(65.07, 2);
    expect((got.dynamic_mPas as number[])[1]).toBeCloseTo(5.889, 3);
    expect((got.density_kgm3 as number[])[1]).toBeCloseTo(795.764, 3);
    expect(got.density_kgm3).toHaveLength(2);
  });
  it('answers one temperature with arrays of one, and none with none', () => {
    const ask = (temperature_C: unknown) =>
      valuesOf(answer({ kind: 'fluid', fluid: 'standard', temperature_C }));
    const lengths = (answered: object) =>
      Object.values(answered).map((values: number[]) => values.length);
    expect(lengths(ask(40))).toEqual([1, 1, 1]);
    expect(lengths(ask([]))).toEqual([0, 0, 0]);
  });
  it.each(['standard', 'low-viscosity', 'ultra-low'])('knows the class %s', (fluid) => {
    expect(
      valuesOf(answer({ kind: 'fluid', fluid, temperature_C: 40 })).kinematic_cSt,
    ).toHaveLength(1);
  });
});

describe('gap', () => {
  const slit = {
    kind: 'gap',
    fluid: pair,
    temperature_C: 20,
    pressure_kPa: 400,
    width_mm: 14,
    height_mm: 0.02,
    length_mm: 3,
  };
  it.each([1e-200, 1e-9, 1e-3, 10])(
    'with %d mm answers three numbers, the share from 0 to 1',
    (height_mm) => {
      const got = valuesOf(answer({ ...slit, height_mm }));
      for (const value of Object.values(got)) expect(Number.isFinite(value)).toBe(true);
      expect(got.viscousShare).toBeGreaterThanOrEqual(0);
      expect(got.viscousShare).toBeLessThanOrEqual(1);
    },
  );
  it('answers flow, Reynolds number and viscous share', () => {
    const got = valuesOf(answer(slit));
    expect(Object.keys(got)).toEqual(['flow_Lmin', 'reynolds', 'viscousShare']);
    // Slot law by hand: 0.014 (2e-5)^3 4e5 / (12 x 0.06507 x 0.003) m3/s; end losses below 1e-4 of it.
    const flow = (0.014 * 8e-15 * 4e5) / (12 * 0.06507 * 0.003);
    expect((got.flow_Lmin as number) / (flow * 60_000)).toBeCloseTo(1, 3);
    expect(got.viscousShare).toBeGreaterThan(0.999);
    expect((got.reynolds as number) / ((2 * flow) / (0.014 * 76.836e-6))).toBeCloseTo(1, 3);
  });
  it('flows back under negative pressure', () => {
    const back = valuesOf(answer({ ...slit, pressure_kPa: -400 }));
    expect(back.flow_Lmin).toBe(-(valuesOf(answer(slit)).flow_Lmin as number));
  });
});

describe('steady', () => {
  it('answers line, circuits, pump and left over, with exactly these keys', () => {
    const got = valuesOf(answer({ ...steady, applied: ['high', 'forward'] }));
    expect(Object.keys(got)).toEqual([
      'line_kPa',
      'circuits',
      'pump_Lmin',
      'leftOver_Lmin',
      'cooler_Lmin',
    ]);
    const circuits = got.circuits as Record<string, Record<string, number>>;
    expect(Object.keys(circuits).sort()).toEqual(['forward', 'high']);
    for (const circuit of Object.values(circuits)) {
      expect(Object.keys(circuit)).toEqual(['pressure_kPa', 'leak_Lmin', 'holds_Nm']);
      expect(Object.values(circuit).every(Number.isFinite)).toBe(true);
    }
  });
  it('answers no circuits when none is applied', () => {
    expect(valuesOf(answer({ ...steady, applied: [] })).circuits).toEqual({});
  });
  it('takes the low-viscosity class where no fluid is named', () => {
    expect(answer(steady)).toEqual(answer({ ...steady, fluid: 'low-viscosity' }));
    expect(answer(steady)).not.toEqual(answer({ ...steady, fluid: 'standard' }));
  });
  it('takes a bare severity, a severity with circuit, and forward where no circuit is named', () => {
    const ask = (faults: unknown) => answer({ ...steady, faults });
    expect(ask({ transferSeal: 0.4 })).toEqual(ask({ transferSeal: { severity: 0.4 } }));
    expect(ask({ sealingRings: 0.5 })).toEqual(
      ask({ sealingRings: { severity: 0.5, circuit: 'forward' } }),
    );
    expect(ask({ sealingRings: { severity: 0.5, circuit: 'high' } })).toEqual(ask({}));
    expect(ask({ sealingRings: 0.5 })).not.toEqual(ask({}));
    expect(ask({})).toEqual(answer(steady));
  });
  it('at zero rpm answers zeros, not minus zeros or nothing', () => {
    expect(answer({ ...steady, engine_rpm: 0 })).toEqual({
      line_kPa: 0,
      circuits: { forward: { pressure_kPa: 0, leak_Lmin: 0, holds_Nm: 0 } },
      pump_Lmin: 0,
      leftOver_Lmin: 0,
      cooler_Lmin: 0,
    });
  });
});

describe('engagement', () => {
  const engagement = {
    kind: 'engagement',
    temperature_C: 20,
    rangeSelection: 'electronic',
    range: 'drive',
  };
  const SERIES = ['engine_rpm', 'turbine_rpm', 'output_rpm', 'clutch_kPa', 'line_kPa'];

  it('answers six series, one entry each 10 ms to 7 s, and the events', () => {
    const got = valuesOf(answer(engagement));
    expect(Object.keys(got)).toEqual(['time_s', ...SERIES, 'events', 'engaged_s']);
    const times = got.time_s as number[];
    expect(times).toHaveLength(701);
    times.forEach((time, index) => expect(time).toBeCloseTo(index / 100, 9));
    for (const name of SERIES) {
      expect(got[name]).toHaveLength(701);
      expect((got[name] as number[]).every(Number.isFinite), name).toBe(true);
    }
    expect(got.events).not.toHaveLength(0);
    for (const event of got.events as object[]) {
      const keys = Object.keys(event).filter((key) => key !== 'code');
      expect(keys).toEqual(['time_s', 'event']);
    }
    // Selected at 0.5 s; a healthy cold clutch is in before the brake comes off at 3.0 s.
    expect(got.engaged_s).toBeGreaterThan(0.5);
    expect(got.engaged_s).toBeLessThan(3);
  });

  it.each([-30, 20, 110])(
    'never rolls backward: no output speed below zero at %d C',
    (temperature_C) => {
      for (const faults of [
        {},
        { transferSeal: 1 },
        { pumpWear: 1 },
        { transferSeal: 0.5, filter: 0.9 },
      ]) {
        const { output_rpm } = valuesOf(answer({ ...engagement, temperature_C, faults }));
        expect(output_rpm).toHaveLength(701);
        expect(Math.min(...(output_rpm as number[]))).toBe(0);
      }
    },
  );

  it('takes a transmission of its own, and its fluid with it', () => {
    const transmission = { fluid: 'standard', clutch: { area_cm2: 100 } };
    const own = answer({ ...engagement, transmission });
    expect(own).not.toEqual(answer(engagement));
    expect(own).toEqual(answer({ ...engagement, transmission, fluid: 'standard' }));
    expect(answer({ ...engagement, transmission: {} })).toEqual(answer(engagement));
  });

  it('answers null where the clutch never takes hold', () => {
    const faults = { transferSeal: 1 };
    expect(valuesOf(answer({ ...engagement, temperature_C: 110, faults })).engaged_s).toBeNull();
  });
});

describe('airTest', () => {
  it('answers the flow of a circuit in grams a second', () => {
    const got = valuesOf(answer({ kind: 'airTest', circuit: 'high' }));
    expect(Object.keys(got)).toEqual(['flow_gs', 'held_percent']);
    // Sound rings stand 10 um high in air, 377 mm by 2 mm, and the slot law holds there: by hand, with Sutherland's 1.8134e-5 Pa s,
    // w h^3 (p1^2 - p2^2) / (24 mu L Rs T).
    const by =
      (0.377 * 1e-15 * (376325 ** 2 - 101325 ** 2)) / (24 * 1.8134e-5 * 2e-3 * 287.0528 * 293.15);
    expect(Math.abs((got.flow_gs as number) / (by * 1e3) - 1)).toBeLessThan(1e-4);
    expect(Math.round(got.held_percent as number)).toBe(89);
  });
  it('tests the transfer seal on its own', () => {
    const ask = (faults: unknown) =>
      valuesOf(answer({ kind: 'airTest', circuit: 'transferSeal', faults })).flow_gs as number;
    expect(ask({})).toBe(0);
    expect(ask({ transferSeal: 0.5 })).toBeGreaterThan(0.5);
    expect(ask({ sealingRings: 1 })).toBe(0);
  });
});

describe('several', () => {
  it('answers one request as an array of one', () => {
    expect(answerAll(steady)).toEqual({ answers: [answer(steady)], refused: false });
  });
  it('answers each in its place, the bad one too', () => {
    const { answers, refused } = answerAll([steady, { kind: 'steady' }, steady]);
    expect(refused).toBe(true);
    expect(answers).toHaveLength(3);
    expect(answers[0]).toEqual(answer(steady));
    expect(answers[2]).toEqual(answer(steady));
    expect(Object.keys(answers[1] ?? {})).toEqual(['error', 'path']);
  });
  it('answers the rest beside one that is refused for each reason there is', () => {
    const deep = JSON.parse('['.repeat(4500) + ']'.repeat(4500)) as unknown;
    const refused = [
      deep,
      null,
      { ...steady, applied: deep },
      { ...steady, transmission: { pump: { slip: deep } } },
      { ...steady, transmission: { pump: { slip: 1 } } },
      { ...steady, faults: { filter: { severity: 1, circuit: 'high' } } },
      { kind: 'fluid', fluid: 'thick', temperature_C: 20 },
    ];
    const { answers } = answerAll(refused.flatMap((one) => [one, steady]));
    answers.forEach((one, index) => {
      if (index % 2 === 1) expect(one).toEqual(answer(steady));
      else expect(Object.keys(one)).toEqual(['error', 'path']);
    });
    expect(answers).toHaveLength(2 * refused.length);
  });
  it('answers an empty array with an empty array', () => {
    expect(answerAll([])).toEqual({ answers: [], refused: false });
  });
});
