// Ranges as makers print them, typed where one number is asked.
import { describe, expect, it } from 'vitest';
import { pressure } from '../../src/quantity/quantities.ts';
import { rangeTyped } from '../../src/quantity/typed-range.ts';

const UP_TO_2000 = { min: 0, max: 2000 };

describe('a range', () => {
  it.each([
    ['55-65', '60'],
    ['55 - 65', '60'],
    ['55–65', '60'],
    ['55 — 65', '60'],
    ['55 to 65', '60'],
    ['55-65 psi', '60 psi'],
    ['55psi-65psi', '60 psi'],
    ['55 psi to 65 psi', '60 psi'],
    ['1.5 to 2 bar', '1.75 bar'],
  ])('%s is named, and its middle offered', (text, middle) =>
    expect(rangeTyped(text, pressure, 'us', UP_TO_2000)).toEqual({
      sentence: `“${text}” is a range, and one number is asked for here. Its middle is ${middle}.`,
      middle,
    }),
  );
  it('whose middle is not allowed says what is', () => {
    const read = rangeTyped('550-650', pressure, 'us', UP_TO_2000);
    expect(read).not.toHaveProperty('middle');
    expect(read?.sentence).toContain(
      'is a range, and one number is asked for here. Write a number',
    );
  });
  it.each(['700 min-1', '55', '55 psi', '-40', '1/64', 'high', '', '55 rpm-65 rpm'])(
    '%j is none',
    (text) => expect(rangeTyped(text, pressure, 'us')).toBeUndefined(),
  );
});
