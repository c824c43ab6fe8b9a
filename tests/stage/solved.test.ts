/** What a lesson's page hands to a simulation, the stage hands it too, and it comes over the line as it left. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { simulations } from '../../src/lessons/simulations.ts';
import { solvedFor } from '../../src/pages/meetings/solved/_solved.ts';

test.each(Object.values(simulations).map(({ id }) => id))('%s', (id) => {
  const page = readFileSync(`src/widgets/${id}/index.astro`, 'utf8');
  const [, given = ''] = /<View([^>]*)\/>/.exec(page) ?? [];
  const props = Array.from(given.matchAll(/\b([a-z]+)=\{/g), ([, name]) => name);
  const solved = solvedFor(id);
  expect(Object.keys(solved)).toEqual(props.filter((name) => name !== 'visible'));
  expect(JSON.parse(JSON.stringify(solved))).toEqual(solved);
});
