/** Every question that sends somebody to a simulation sends him to one that is there, at a state that it takes as it stands. */
import { expect, test } from 'vitest';
import { builtPages, simulationsIn } from '../../src/build/pages.ts';
import { authoredBank } from '../../src/lessons/question-bank.ts';
import { currentValues } from '../../src/simulation/current-values.ts';
import { readLink } from '../../src/simulation/later/link-schema.ts';
import { everySimulation } from '../simulation/every-simulation.ts';

const sent = authoredBank().flatMap(({ id, tryIt }) =>
  tryIt === undefined ? [] : [{ id, tryIt }],
);
const pages = builtPages();

test('some question sends to a simulation', () => {
  expect(sent.length).toBeGreaterThan(20);
});

test.each(sent)('$id', ({ tryIt }) => {
  const { pathname, search, hash } = new URL(tryIt, 'https://example.org');
  const page = pages.find(({ address }) => address === pathname);
  expect(page, `no page ${pathname}`).toBeDefined();
  const id = hash.slice(1);
  expect(simulationsIn(page?.html ?? '')).toContain(id);
  const one = everySimulation.find(({ sim }) => sim.id === id);
  if (one === undefined) throw new Error(`no simulation ${id}`);
  const { present, notes } = readLink(one.sim, currentValues(one.sim, one.makeModel()), search);
  expect(present, 'the address speaks of its own simulation').toBe(true);
  // Whatever had to be changed would be told in a sentence.
  expect(notes).toEqual([]);
});
