import { expect, test } from 'vitest';
import { hashOf, readView, type View } from '../../../src/rounds/rehearsal/view.ts';

test('what the page shows stands in its address and is read back', () => {
  const all: readonly View[] = [
    { at: 'before' },
    { at: 'question' },
    { at: 'all' },
    { at: 'result', begun: 1_795_942_800_000 },
  ];
  for (const view of all) expect(readView(hashOf(view))).toEqual(view);
});

test.each(['#', '#result-', '#result-x', '#result-1e9', '#questions', '#result-1234567890123456'])(
  'an address that names nothing shows the beginning: %s',
  (hash) => {
    expect(readView(hash)).toEqual({ at: 'before' });
  },
);
