import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  inSystem,
  quantityNames,
  withUnit,
  type Quantity,
  type System,
} from '../../src/quiz/quantities.ts';
import { readAmount } from '../../src/quiz/read-amount.ts';

const PSI = 6.894757293168361;

test.each<[string, Quantity, System, number]>([
  ['383', 'pressure', 'si', 383],
  ['383', 'pressure', 'us', 383 * PSI],
  ['5,7 kPa', 'pressure', 'us', 5.7],
  ['83 psi', 'pressure', 'si', 83 * PSI],
  ['83psi.', 'pressure', 'si', 83 * PSI],
  ['3.8 bar', 'pressure', 'us', 380],
  ['0,6 MPa', 'pressure', 'si', 600],
  ['1 200 kPa', 'pressure', 'si', 1200],
  ['1,200 kPa', 'pressure', 'si', 1200],
  ['1,200.5', 'pressure', 'si', 1200.5],
  ['1.200,5', 'pressure', 'si', 1200.5],
  ['0.125', 'length', 'si', 0.125],
  ['0,125 mm', 'length', 'us', 0.125],
  ['.25mm', 'length', 'si', 0.25],
  ['10 thou', 'length', 'us', 0.254],
  ['−10 °C', 'temperature', 'us', -10],
  ['180F', 'temperature', 'si', (180 - 32) / 1.8],
  ['180 deg F', 'temperature', 'si', (180 - 32) / 1.8],
  ['150 N.m', 'torque', 'us', 150],
  ['100 ft-lb', 'torque', 'si', 135.58179483314],
  ['2.5', 'number', 'si', 2.5],
  ['2.5 times', 'number', 'us', 2.5],
  ['2.4 gpm', 'flow', 'si', 9.0849882816],
  ['7.3 mm2/s', 'kinematicViscosity', 'si', 7.3],
  ['5.9 cP', 'dynamicViscosity', 'si', 5.9],
  ['1e3', 'pressure', 'si', 1000],
])('reads "%s" as %s', (text, quantity, system, value) => {
  const reading = readAmount(text, quantity, system);
  expect(reading.ok, reading.ok ? '' : reading.sentence).toBe(true);
  if (reading.ok) expect(reading.value).toBeCloseTo(value, 8);
});

test.each<[string, RegExp]>([
  ['', /no number yet/],
  ['about 300', /"about 300" does not start with a number/],
  ['300 rpm', /"rpm" is no unit of pressure here/],
  ['3.0.0', /cannot be read as one number/],
  ['1,2,3', /cannot be read as one number/],
  ['30 40', /cannot be read as one number/],
  ['..', /cannot be read/],
  ['NaN', /does not start/],
  ['1/4 psi', /is no unit/],
])('refuses "%s" in words that say what is allowed', (text, sentence) => {
  const reading = readAmount(text, 'pressure', 'si');
  if (reading.ok) throw new Error(`read as ${reading.value}`);
  expect(reading.sentence).toMatch(sentence);
  expect(reading.sentence).toContain('with kPa or psi, for example "250 kPa".');
});

test('whatever the site prints, it can read back, in every quantity and both systems', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...quantityNames),
      fc.constantFrom<System>('si', 'us'),
      fc.double({ min: 0.01, max: 9999, noNaN: true }),
      (q, system, value) => {
        const printed = withUnit(value, q, system).replace(/ \(.*/, '');
        const reading = readAmount(printed, q, system === 'si' ? 'us' : 'si');
        if (!reading.ok) throw new Error(`${printed}: ${reading.sentence}`);
        // Printed to three figures: half a unit in the last is 0.5 % at worst of the shown size.
        const shown = Math.abs(inSystem(value, q, system));
        expect(
          Math.abs(inSystem(reading.value, q, system) - inSystem(value, q, system)),
        ).toBeLessThanOrEqual(0.0051 * shown + 1e-9);
      },
    ),
  );
});

test('no text makes it throw or give a number that is none', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.constantFrom(...quantityNames), (text, q) => {
      const reading = readAmount(text, q, 'si');
      if (reading.ok) expect(Number.isFinite(reading.value)).toBe(true);
      else expect(reading.sentence.length).toBeGreaterThan(20);
    }),
  );
});
