import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseEntry } from '../../src/ui/parse-entry.ts';
import {
  flow,
  format,
  length,
  pressure,
  speed,
  temperature,
  torque,
} from '../../src/ui/quantity.ts';

const T = { min: -30, max: 140 };
const value = (entry: ReturnType<typeof parseEntry>): number => {
  if (!entry.ok) throw new Error(entry.sentence);
  return entry.value;
};
const sentence = (entry: ReturnType<typeof parseEntry>): string => {
  if (entry.ok) throw new Error(`taken as ${entry.value}`);
  return entry.sentence;
};

describe('typed values', () => {
  it.each([
    ['212 F', 100],
    ['212°F', 100],
    [' 212 degrees F ', 100],
    ['100c', 100],
    ['373.15 K', 100],
    ['\u221220 °C', -20],
    ['+20', 20],
    ['1e2 C', 100],
  ])('takes %j in either unit system', (text, celsius) => {
    expect(value(parseEntry(text, temperature, 'si', T))).toBeCloseTo(celsius, 6);
  });
  it('reads a bare number in the units in force', () => {
    expect(value(parseEntry('212', temperature, 'us', T))).toBe(100);
    expect(value(parseEntry('100', temperature, 'si', T))).toBe(100);
  });
  it('takes a decimal comma, a leading point, and thousandths', () => {
    const crack = { min: 0, max: 0.6 };
    expect(value(parseEntry('0,25 mm', length, 'us', crack))).toBe(0.25);
    expect(value(parseEntry('.25', length, 'si', crack))).toBe(0.25);
    expect(value(parseEntry('10 thou', length, 'us', crack))).toBeCloseTo(0.254, 6);
    expect(value(parseEntry('0.01 in', length, 'us', crack))).toBeCloseTo(0.254, 6);
  });
  it('reads "1,200" the way the range allows', () => {
    expect(value(parseEntry('1,200 rpm', speed, 'us', { min: 600, max: 6000 }))).toBe(1200);
    expect(value(parseEntry('1,200', length, 'si', { min: 0, max: 2 }))).toBe(1.2);
    expect(value(parseEntry('12,345.5', speed, 'si', { min: 0, max: 2e4 }))).toBe(12345.5);
    expect(value(parseEntry('12.345,5', speed, 'si', { min: 0, max: 2e4 }))).toBe(12345.5);
  });
  it('knows the spellings of the trade', () => {
    expect(value(parseEntry('30 psi', pressure, 'si', { min: 0, max: 2000 }))).toBeCloseTo(
      206.842719,
      5,
    );
    expect(value(parseEntry('2 bar', pressure, 'us', { min: 0, max: 2000 }))).toBe(200);
    expect(value(parseEntry('5 US gpm', flow, 'si', { min: 0, max: 60 }))).toBeCloseTo(
      18.927059,
      5,
    );
    expect(value(parseEntry('20 l/min', flow, 'us', { min: 0, max: 60 }))).toBe(20);
    for (const text of ['100 ft-lb', '100 lbf·ft', '100 lb ft']) {
      expect(value(parseEntry(text, torque, 'si', { min: 0, max: 500 }))).toBeCloseTo(
        135.581795,
        5,
      );
    }
  });
  it('takes the limits themselves in both systems', () => {
    expect(value(parseEntry('-22', temperature, 'us', T))).toBe(-30);
    expect(value(parseEntry('284 F', temperature, 'si', T))).toBe(140);
  });
});

describe('refusals', () => {
  it.each(['', '   ', 'hot', 'NaN', 'Infinity', '1.2.3.4', '--4', '12 parsec'])(
    'say in %j what is allowed',
    (text) => {
      const words = sentence(parseEntry(text, temperature, 'us', T));
      expect(words).toContain(format(-30, temperature, 'us'));
      expect(words).toContain(format(140, temperature, 'us'));
      expect(words.endsWith('.')).toBe(true);
    },
  );
  it('name the value and the side it missed on', () => {
    expect(sentence(parseEntry('180', temperature, 'si', T))).toBe(
      '180\u00a0°C is above what is allowed here: \u221230\u00a0°C to 140\u00a0°C.',
    );
    expect(sentence(parseEntry('-99', temperature, 'si', T))).toContain('below');
  });
});

it('never throws, and what it takes is in range', () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc
      .tuple(fc.double(), fc.constantFrom('', ' F', 'C', ' bar', '__proto__', 'constructor'))
      .map(([n, u]) => `${n}${u}`),
  );
  fc.assert(
    fc.property(text, fc.constantFrom('si' as const, 'us' as const), (typed, system) => {
      const entry = parseEntry(typed, temperature, system, T);
      if (entry.ok) {
        expect(entry.value).toBeGreaterThanOrEqual(T.min);
        expect(entry.value).toBeLessThanOrEqual(T.max);
      } else expect(entry.sentence.length).toBeGreaterThan(20);
    }),
    { numRuns: 1000 },
  );
});

it('takes back what it prints, to the decimals printed', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -30, max: 140 }),
      fc.constantFrom('si' as const, 'us' as const),
      (t, system) => {
        const back = value(parseEntry(format(t, temperature, system), temperature, system, T));
        expect(Math.abs(back - t)).toBeLessThan(0.3); // half a degree Fahrenheit
      },
    ),
  );
});
