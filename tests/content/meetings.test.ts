/** Meetings on the built site: every state is one that its simulation takes as it stands, and answers come after hands. */
import { describe, expect, test } from 'vitest';
import { builtPages, simulationsIn } from '../../src/build/pages.ts';
import type { Scene } from '../../src/meeting/meeting.ts';
import { passageText } from '../../src/quiz/asked.ts';
import type { Passage } from '../../src/quiz/passage.ts';
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

/** Speech to a room that follows a picture: 120 to 150 words a minute, common practice, no source. */
const WORDS_A_MINUTE = 130;
/** Hands of a shop for three or four answers, counted and typed, and one reason said aloud: our own estimate. */
const MINUTES_A_VOTE = 0.5;
/** A car that the room works through: its talk, three readings, the answer. Our own estimate. */
const MINUTES_A_CAR = 3;

const count = (text: string): number => text.split(/\s+/).filter((word) => /\w/.test(word)).length;
const wordsOfPassages = (passages: readonly Passage[]): string =>
  passages.map((passage) => passageText(passage, 'us')).join(' ');
const wordsIn = (passages: readonly Passage[]): number =>
  passages.reduce((sum, passage) => sum + count(passageText(passage, 'us')), 0);

/** Heading, lines and notes; of a vote its question, the options, and why the right one is right; of a case its customer. */
function wordsOf(scene: Scene): number {
  const { heading, lines, notes } = scene;
  const right = scene.kind === 'vote' ? scene.options.filter(({ correct }) => correct) : [];
  return wordsIn([
    ...[[heading], ...lines, notes, ...right.map(({ why }) => why)],
    ...(scene.kind === 'vote' ? [scene.stem, ...scene.options.map(({ words }) => words)] : []),
    ...(scene.kind === 'case' && scene.complaint !== undefined ? [[scene.complaint]] : []),
  ]);
}

/** Words of a text, as far as they could give something away: those that every sentence has are left out. */
const telling = (text: string): Set<string> =>
  new Set(
    text
      .toLowerCase()
      .match(/\p{L}{4,}/gu)
      ?.filter((word) => !EVERYDAY.has(word)),
  );
const EVERYDAY = new Set(
  'that this what which with have than then them they does from before after more most same when once they them able'.split(
    ' ',
  ),
);

describe.each(meetings)('$id', ({ id, title, about, goal, minutes, scenes }) => {
  // They stand on the wall while people gather.
  test('neither title, lead nor goal has a word of a right answer that no wrong one has', () => {
    const shown = telling(`${title} ${about} ${goal}`);
    for (const scene of scenes) {
      if (scene.kind !== 'vote') continue;
      const words = (right: boolean) =>
        telling(
          scene.options
            .filter(({ correct }) => correct === right)
            .map((one) => passageText(one.words, 'us'))
            .join(' '),
        );
      // What the question says gives nothing away either.
      const harmless = new Set([...words(false), ...telling(passageText(scene.stem, 'us'))]);
      const given = [...words(true)].filter((word) => shown.has(word) && !harmless.has(word));
      expect(given).toEqual([]);
    }
  });

  test('of a car the wall and the notes name one count of readings', () => {
    for (const { kind, lines, notes } of scenes) {
      if (kind !== 'case') continue;
      const said = wordsOfPassages([...lines, notes]).matchAll(
        /\b(one|two|three|four|five|six) (?:readings|pressures)/giu,
      );
      expect(new Set([...said].map(([, count]) => count?.toLowerCase())).size).toBeLessThan(2);
    }
  });

  test('is a meeting of about ten minutes with hands in it', () => {
    expect(scenes.length).toBeGreaterThanOrEqual(7);
    expect(scenes.length).toBeLessThanOrEqual(10);
    expect(scenes.filter(({ kind }) => kind === 'vote').length).toBeGreaterThanOrEqual(2);
  });

  test('leaves room for hands, talk and runs if every word of it is said aloud', () => {
    const votes = scenes.filter(({ kind }) => kind === 'vote').length;
    const isWorked = scenes.some((scene) => scene.kind === 'case' && 'week' in scene.car);
    const spoken = scenes.reduce((sum, scene) => sum + wordsOf(scene), 0) / WORDS_A_MINUTE;
    expect(minutes - spoken).toBeGreaterThanOrEqual(
      votes * MINUTES_A_VOTE + (isWorked ? MINUTES_A_CAR : 0),
    );
  });

  test('every option of a vote says why, and no two say the same', () => {
    for (const scene of scenes) {
      if (scene.kind !== 'vote') continue;
      const whys = scene.options.map(({ why }) => passageText(why, 'us'));
      expect(whys.filter((why) => why.length > 15)).toHaveLength(scene.options.length);
      expect(new Set(whys).size).toBe(whys.length);
    }
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
    const whys = scenes.flatMap((scene) =>
      scene.kind === 'vote' ? scene.options.map(({ why: [first] }) => first) : [],
    );
    for (const why of whys)
      if (typeof why === 'string') expect(shown).toContain(why.replaceAll("'", '&#39;').trim());
  });
});
