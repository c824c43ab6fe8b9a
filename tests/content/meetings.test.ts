/** Meetings on the built site: every state is one that its simulation takes as it stands, and answers come after hands. */
import { describe, expect, test } from 'vitest';
import { builtPages, simulationsIn } from '../../src/build/pages.ts';
import { plannedMeetings } from '../../src/lessons/meetings.ts';
import { currentValues } from '../../src/simulation/current-values.ts';
import { readLink } from '../../src/simulation/later/link-schema.ts';
import { everySimulation } from '../simulation/every-simulation.ts';

const meetings = plannedMeetings();
const pages = builtPages();
const states = meetings.flatMap(({ id, scenes }) =>
  scenes.flatMap((scene, i) =>
    scene.kind === 'simulation'
      ? [scene.state, ...(scene.run === undefined ? [] : [scene.run])].map((href) => ({
          ...{ where: `${id}, scene ${i + 1}`, href },
        }))
      : [],
  ),
);

test.each(states)('$where: $href', ({ href }) => {
  const { pathname, search, hash } = new URL(`/${href}`, 'https://example.org');
  const page = pages.find(({ address }) => address === pathname);
  const id = hash.slice(1);
  expect(simulationsIn(page?.html ?? '')).toContain(id);
  const one = everySimulation.find(({ sim }) => sim.id === id);
  if (one === undefined) throw new Error(`no simulation ${id}`);
  const { present, notes } = readLink(one.sim, currentValues(one.sim, one.makeModel()), search);
  expect(present).toBe(true);
  // Whatever had to be changed would be told in a sentence.
  expect(notes).toEqual([]);
});

describe.each(meetings)('$id', ({ id, scenes }) => {
  test('is a meeting of about ten minutes with hands in it', () => {
    expect(scenes.length).toBeGreaterThanOrEqual(7);
    expect(scenes.length).toBeLessThanOrEqual(10);
    expect(scenes.filter(({ kind }) => kind === 'vote').length).toBeGreaterThanOrEqual(2);
  });

  test('the room votes before the first simulation runs', () => {
    const kinds = scenes.map(({ kind }) => kind);
    const run = kinds.indexOf('simulation');
    if (run !== -1) expect(kinds.slice(0, run)).toContain('vote');
  });

  test('is read and printed without a script: every heading and all notes stand on its page', () => {
    const html = pages.find(({ address }) => address === `/meetings/${id}/`)?.html ?? '';
    const shown = html.replace(/<astro-island[^]*?<\/astro-island>/g, '');
    for (const { heading, notes } of scenes) {
      expect(shown).toContain(heading.replaceAll("'", '&#39;'));
      const [first] = notes;
      if (typeof first === 'string')
        expect(shown).toContain(first.slice(0, 30).replaceAll("'", '&#39;'));
    }
  });
});
