import fc from 'fast-check';
import type { Marks } from '../../src/quantity/language.ts';
import { describe, expect, it, test } from 'vitest';
import { quantities, quantityNames, type QuantityName } from '../../src/quantity/by-name.ts';
import { parseAmount, type ParsedAmount } from '../../src/quantity/parse-amount.ts';
import { format } from '../../src/quantity/print.ts';
import { length, pressure, speed, temperature } from '../../src/quantity/quantities.ts';
import { toShown } from '../../src/quantity/quantity.ts';
import type { UnitSystem } from '../../src/quantity/unit-system.ts';

// NIST SP 811 (2008), appendix B.
const PSI = 6.894757293168361;
const T = { min: -30, max: 140 };
const value = (parsed: ParsedAmount): number => {
  if (!parsed.ok) throw new Error(parsed.sentence);
  return parsed.value;
};
const sentence = (parsed: ParsedAmount): string => {
  if (parsed.ok) throw new Error(`taken as ${parsed.value}`);
  return parsed.sentence;
};

test.each<[string, QuantityName, UnitSystem, number]>([
  ['383', 'pressure', 'si', 383],
  ['383', 'pressure', 'us', 383 * PSI],
  ['5,7 kPa', 'pressure', 'us', 5.7],
  ['83 psi', 'pressure', 'si', 83 * PSI],
  ['83psi.', 'pressure', 'si', 83 * PSI],
  ['3.8 bar', 'pressure', 'us', 380],
  ['0,6 MPa', 'pressure', 'si', 600],
  ['1 200 kPa', 'pressure', 'si', 1200],
  ['1\u202f200 kPa', 'pressure', 'si', 1200],
  ['1,200 kPa', 'pressure', 'si', 1200],
  ['1,200.5', 'pressure', 'si', 1200.5],
  ['1.200,5', 'pressure', 'si', 1200.5],
  ["12'345", 'speed', 'si', 12345],
  ['1e3', 'pressure', 'si', 1000],
  ['1/4 psi', 'pressure', 'si', PSI / 4],
  ['0.125', 'length', 'si', 0.125],
  ['0,125 mm', 'length', 'us', 0.125],
  ['.25mm', 'length', 'si', 0.25],
  ['250 µm', 'length', 'us', 0.25],
  ['10 thou', 'length', 'us', 0.254],
  ['10 thousandths', 'length', 'si', 0.254],
  ['10', 'length', 'us', 0.254],
  ['0.01 in', 'length', 'us', 0.254],
  ['1/64 in', 'length', 'si', 0.396875],
  ['1/64"', 'length', 'si', 0.396875],
  ['2 9/16 in', 'dimension', 'si', 65.0875],
  ['2½″', 'dimension', 'si', 63.5],
  ['212 F', 'temperature', 'si', 100],
  ['212°F', 'temperature', 'si', 100],
  [' 212 degrees F ', 'temperature', 'si', 100],
  ['180 deg F', 'temperature', 'si', (180 - 32) / 1.8],
  ['180F', 'temperature', 'si', (180 - 32) / 1.8],
  ['100c', 'temperature', 'us', 100],
  ['373.15 K', 'temperature', 'us', 100],
  ['\u221210 °C', 'temperature', 'us', -10],
  ['+20', 'temperature', 'si', 20],
  ['18 °F', 'temperatureRise', 'si', 10],
  ['150 N.m', 'torque', 'us', 150],
  ['100 ft-lb', 'torque', 'si', 135.58179483314],
  ['100 lbf·ft', 'torque', 'si', 135.58179483314],
  ['100 lb ft', 'torque', 'si', 135.58179483314],
  ['5 US gpm', 'flow', 'si', 18.92705892],
  ['2.4 gpm', 'flow', 'si', 9.0849882816],
  ['20 l/min', 'flow', 'us', 20],
  ['2.5 times', 'times', 'us', 2.5],
  ['30 x', 'multiple', 'us', 30],
  ['700 1/min', 'speed', 'us', 700],
  ['7.3 mm2/s', 'kinematicViscosity', 'si', 7.3],
  ['7.3 mm²/s', 'kinematicViscosity', 'si', 7.3],
  ['5.9 cP', 'dynamicViscosity', 'si', 5.9],
  ['0.87 kg/L', 'density', 'us', 870],
  ['13.2 sq in', 'area', 'si', 85.16112],
])('reads "%s" as %s', (text, name, system, expected) => {
  expect(value(parseAmount(text, quantities[name], system))).toBeCloseTo(expected, 8);
});

describe('within a range', () => {
  it('reads "1,200" the way the range allows', () => {
    expect(value(parseAmount('1,200 rpm', speed, 'us', { min: 600, max: 6000 }))).toBe(1200);
    expect(value(parseAmount('1.200 rpm', speed, 'us', { min: 600, max: 6000 }))).toBe(1200);
    expect(value(parseAmount('1,200', length, 'si', { min: 0, max: 2 }))).toBe(1.2);
  });
  it('reads a lone mark as the language has it, which says its marks', () => {
    const read = (text: string, marks: Marks): number =>
      value(parseAmount(text, speed, 'si', undefined, marks));
    expect([read('1,200', ',.'), read('1.200', ',.')]).toEqual([1200, 1.2]);
    expect([read('1,200', '.,'), read('1.200', '.,')]).toEqual([1.2, 1200]);
  });
  it('takes the limits themselves in both systems, without the dust of conversion', () => {
    expect(value(parseAmount('-22', temperature, 'us', T))).toBe(-30);
    expect(value(parseAmount('284 F', temperature, 'si', T))).toBe(140);
    expect(value(parseAmount('212', temperature, 'us', T))).toBe(100);
  });
  it('takes for a limit what prints like it', () => {
    const crack = { min: 0.02, max: 0.4 };
    expect(format(0.4, length, 'us')).toBe('16\u00a0thousandths');
    expect(value(parseAmount('16', length, 'us', crack))).toBe(0.4);
    expect(parseAmount('17', length, 'us', crack).ok).toBe(false);
  });
});

describe('refusals', () => {
  it.each([
    ['', 'There is no number yet.'],
    ['   ', 'There is no number yet.'],
    ['about 300', '“about 300” does not start with a number.'],
    ['NaN', '“NaN” does not start with a number.'],
    ['Infinity', 'does not start with a number.'],
    ['--4', 'does not start with a number.'],
    ['300 rpm', '“rpm” is no unit of pressure here.'],
    ['1/0 psi', '“1/0” cannot be read as one number.'],
    ['3.0.0', 'cannot be read as one number.'],
    ['1,2,3', 'cannot be read as one number.'],
    ['30 40', 'cannot be read as one number.'],
    ['..', 'cannot be read as one number.'],
    ['300 __proto__', 'is no unit'],
  ])('%j: what was wrong, then what is allowed', (text, problem) => {
    const said = sentence(parseAmount(text, pressure, 'si'));
    expect(said).toContain(problem);
    expect(said).toContain('Write a number with kPa or psi.');
  });
  it('put the reader’s unit first, and name the range where there is one', () => {
    expect(sentence(parseAmount('hot', temperature, 'us', T))).toBe(
      '“hot” does not start with a number. Write a number with °F or °C, \u221222\u00a0°F to 284\u00a0°F, such as 131.',
    );
  });
  it('name the value and the side it missed on', () => {
    expect(sentence(parseAmount('180', temperature, 'si', T))).toBe(
      '180\u00a0°C is above what is allowed here: \u221230\u00a0°C to 140\u00a0°C.',
    );
    expect(sentence(parseAmount('-99', temperature, 'si', T))).toContain('below');
  });
});

test('whatever the site prints, it can read back, in every quantity and from either system', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...quantityNames),
      fc.constantFrom<UnitSystem>('si', 'us'),
      fc.constantFrom<Marks>(',.', '.,'),
      fc.double({ min: 0.01, max: 99_999, noNaN: true }),
      (name, system, marks, size) => {
        const quantity = quantities[name];
        const printed = format(size, quantity, system, marks);
        const other = system === 'si' ? 'us' : 'si';
        const back = value(parseAmount(printed, quantity, other, undefined, marks));
        expect(format(back, quantity, system, marks)).toBe(printed);
        const [shown, again] = [size, back].map((v) => Math.abs(toShown(v, quantity, system)));
        // Half a unit in the last place, which is one at most.
        expect(Math.abs((again ?? 0) - (shown ?? 0))).toBeLessThanOrEqual(0.5);
      },
    ),
    { numRuns: 500 },
  );
});

test('no text makes it throw, give a number that is none, or leave the range', () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme' }),
    fc
      .tuple(fc.double(), fc.constantFrom('', ' F', 'C', ' bar', '__proto__', 'constructor', '/4'))
      .map(([n, u]) => `${n}${u}`),
  );
  fc.assert(
    fc.property(
      text,
      fc.constantFrom(...quantityNames),
      fc.constantFrom<UnitSystem>('si', 'us'),
      (typed, name, system) => {
        const free = parseAmount(typed, quantities[name], system);
        if (free.ok) expect(Number.isFinite(free.value)).toBe(true);
        else expect(free.sentence.length).toBeGreaterThan(20);
        const held = parseAmount(typed, temperature, system, T);
        if (held.ok) {
          expect(held.value).toBeGreaterThanOrEqual(T.min);
          expect(held.value).toBeLessThanOrEqual(T.max);
        } else expect(held.sentence.endsWith('.')).toBe(true);
      },
    ),
    { numRuns: 300 },
  );
});
