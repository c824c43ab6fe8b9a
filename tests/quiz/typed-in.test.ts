import { expect, test } from 'vitest';
import { quantityNames, quantityOf } from '../../src/quantity/by-name.ts';
import { parseAmount } from '../../src/quantity/parse-amount.ts';
import { typedIn } from '../../src/quiz/typed-in.ts';

const systems = ['si', 'us'] as const;

test('a pressure typed as psi gets its unit where kPa are shown, and none where psi are', () => {
  // 60 psi are 414 kPa (NIST SP 811: 1 psi is 6.894 757 kPa), so a bare 60 would not do.
  expect(typedIn({ kind: 'typed', text: '60', system: 'us' }, 'pressure', 'si')).toBe('60 psi');
  expect(typedIn({ kind: 'typed', text: '60', system: 'us' }, 'pressure', 'us')).toBe('60');
  expect(typedIn({ kind: 'typed', text: '60 psi', system: 'us' }, 'pressure', 'si')).toBe('60 psi');
  expect(typedIn({ kind: 'typed', text: 'sixty', system: 'us' }, 'pressure', 'si')).toBe('sixty');
  expect(typedIn({ kind: 'typed', text: '', system: 'us' }, 'pressure', 'si')).toBe('');
});

test('in every quantity it means in one system what it meant in the other', () => {
  for (const name of quantityNames) {
    for (const system of systems) {
      for (const shown of systems) {
        const there = typedIn({ kind: 'typed', text: '12.5', system }, name, shown);
        expect(parseAmount(there, quantityOf(name), shown), `${name} ${system} ${shown}`).toEqual(
          parseAmount('12.5', quantityOf(name), system),
        );
      }
    }
  }
});
