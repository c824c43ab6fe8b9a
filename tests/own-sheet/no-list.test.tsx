// What stands where the list of causes would: for each thing that is missing what it is and where it is mended, and for nothing else.
import { signal } from '@preact/signals';
import render from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { training } from '../../src/engine/index.ts';
import { NoList } from '../../src/own-sheet/NoList.tsx';
import type { Basis, TableIs } from '../../src/planner/model.ts';

const own: Basis = { kind: 'own', plant: training, own: { name: 'Van', yours: 1, of: 72 } };
const said = (is: TableIs): string =>
  render(
    <NoList
      model={{ tableIs: signal(is), basis: signal(is === 'gone' ? null : own) }}
      which="sheet-1"
    />,
  );

test.each<[TableIs, RegExp, string | null]>([
  ['noTable', /no table of “Van”. Make the table/, '/measure/transmission/#sheet-1'],
  ['faulty', /“Van” cannot be right. Open it/, '/measure/transmission/#sheet-1'],
  ['gone', /not on this device/, '/measure/transmission/'],
  ['making', /table of “Van” is being worked out/, null],
  ['missed', /did not load. Check that you are connected/, null],
])('%s', (is, why, leads) => {
  expect(said(is)).toMatch(why);
  expect(/href="([^"]*)"/.exec(said(is))?.[1] ?? null).toBe(leads);
});

test.each<TableIs>(['ready', 'fetching'])('nothing while it comes by itself: %s', (is) =>
  expect(said(is)).toBe(''),
);
