import { expect, test } from 'vitest';
import { makeCase } from '../../src/cases/made.ts';
import { decodeTable } from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { customerOf } from '../../src/practice/customer.ts';

const table = decodeTable(keptTable);
const cars = Array.from({ length: 30 }, (_, i) =>
  makeCase({ seed: i + 1, level: 3, on: 'training' }, table),
);

test('a customer speaks of the ranges that are hit, and says when', () => {
  for (const car of cars) {
    const { complaint, asked } = customerOf(car);
    const { drive, reverse, light } = car.noticed;
    if (drive.hot !== 'good') expect(complaint).toContain('Drive');
    if (reverse.hot !== 'good') expect(complaint).toContain('Reverse');
    if (drive.hot === 'never' && drive.cold === 'good') expect(complaint).toMatch(/[Cc]old/);
    expect(asked.lights).toBe(light ? 'Yes, one.' : 'No.');
    expect(complaint.trim()).not.toBe('');
    expect(complaint).not.toMatch(/^And| {2}|undefined/);
  }
});

test('and says the same on every device', () => {
  const [car] = cars;
  if (car === undefined) throw new Error('There is no car.');
  expect(customerOf(car)).toEqual(customerOf(car));
});
