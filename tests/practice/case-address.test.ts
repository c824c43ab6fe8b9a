import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LEVELS, MOST_SEED } from '../../src/cases/made-key.ts';
import { keyOf, readAddress, searchOf } from '../../src/practice/case-address.ts';

test('what is printed is read back', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: MOST_SEED }),
      fc.constantFrom(...LEVELS),
      fc.constantFrom('training' as const, 'second' as const),
      (seed, level, on) => {
        const asked = { kind: 'made', key: { seed, level, on } } as const;
        expect(readAddress(searchOf(asked))).toEqual(asked);
      },
    ),
  );
  const written = { kind: 'written', id: 'fine-cold-revs-hot' } as const;
  expect(readAddress(searchOf(written))).toEqual(written);
});

test('never throws, and says what is not a car', () => {
  fc.assert(fc.property(fc.string(), (text) => void readAddress(`?${text}`)));
  for (const bad of ['0', '100000', '-3', '2.5', 'x', '', '1e3'])
    expect(readAddress(`?number=${bad}`)).toEqual({ kind: 'bad-made' });
  expect(readAddress('?number=5&level=4')).toEqual({ kind: 'bad-made' });
  expect(readAddress('?number=5&on=third')).toEqual({ kind: 'bad-made' });
  expect(readAddress('?number=5')).toEqual({
    kind: 'made',
    key: { seed: 5, level: 1, on: 'training' },
  });
  expect(readAddress('')).toEqual({ kind: 'none' });
});

test('two made cars never share a name', () => {
  expect(keyOf({ seed: 11, level: 1, on: 'second' })).not.toBe(
    keyOf({ seed: 1, level: 1, on: 'second' }),
  );
});
