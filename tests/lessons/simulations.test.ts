// The table that times and checks read, against the simulations themselves.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { simulations } from '../../src/lessons/simulations.ts';
import { everySimulation } from '../simulation/every-simulation.ts';

test('each simulation stands in the table with its id and the number of its tasks', () => {
  const table = Object.values(simulations).map(({ id, tasks }) => [id, tasks]);
  const real = everySimulation.map(({ sim }) => [sim.id, sim.tasks.length]);
  expect(table.toSorted()).toEqual(real.toSorted());
});

test('under the tag that brings it into a lesson', () => {
  const figures = readFileSync('src/lessons/figures.en.ts', 'utf8');
  for (const [tag, { id }] of Object.entries(simulations)) {
    const [, folder] =
      new RegExp(`import ${tag} from '../widgets/([\\w-]+)/index.astro'`).exec(figures) ?? [];
    const found = everySimulation.find(({ name }) => name === folder);
    expect(found?.sim.id, tag).toBe(id);
  }
});
