import { expect, test } from 'vitest';
import { quantities, quantityNames } from '../../src/quantity/by-name.ts';
import { typedUnits, unitKey } from '../../src/quantity/typed-units.ts';

test('a unit is what it is in any case, spacing and sign', () => {
  expect(['lbf·ft', 'LBF FT', 'lbf-ft', 'lbf.ft'].map(unitKey)).toEqual(Array(4).fill('lbfft'));
  expect([' °F', 'deg F', 'degrees f', '℉'].map(unitKey)).toEqual(Array(4).fill('f'));
  expect(unitKey('µm')).toBe(unitKey('um'));
  expect(unitKey('cm²')).toBe('cm2');
});

test('every quantity can be typed in what it is printed in, and no other unit takes its key', () => {
  for (const name of quantityNames) {
    const quantity = quantities[name];
    const units = typedUnits(quantity);
    for (const printed of [quantity.si, quantity.us]) {
      if (printed.symbol !== '') expect(units.get(unitKey(printed.symbol)), name).toBe(printed);
    }
  }
});

test('only those quantities share a name that may be typed alike', () => {
  const names = quantityNames.map((name) => quantities[name].name);
  const twice = names.filter((name, i) => names.indexOf(name) !== i);
  expect(twice).toEqual(['torque']);
});
