import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Scene } from '../../src/meeting/meeting.ts';
import {
  back,
  hashOf,
  lastPlace,
  next,
  readHash,
  START,
  stepsOf,
} from '../../src/meeting/steps.ts';

const common = { heading: 'A', lines: [], notes: [] };
const option = { words: ['x'], correct: true, why: [] };
const scenes: readonly Scene[] = [
  { ...common, kind: 'say' },
  { ...common, kind: 'vote', stem: ['?'], options: [option, { ...option, correct: false }] },
  { ...common, kind: 'simulation', state: '/a/?b=1#b', run: '/a/?b=1~x.2#b' },
  { ...common, kind: 'simulation', state: '/a/?b=1#b' },
  { ...common, kind: 'case', car: { week: 1 } },
];
const meeting = { scenes };
const all = scenes.reduce((sum, scene) => sum + stepsOf(scene).length, 0);

describe('steps of a meeting', () => {
  test('hands come before bars, and bars before the answer', () => {
    expect(scenes.map((scene) => stepsOf(scene).join(' '))).toEqual([
      'shown',
      'ask tally answer',
      'state run',
      'state',
      'told open',
    ]);
  });

  test('going on visits every step once, and back the same way', () => {
    const way = [START];
    while (way.length < 50) {
      const to = next(meeting, way.at(-1) ?? START);
      if (to === way.at(-1)) break;
      way.push(to);
    }
    expect(way).toHaveLength(all);
    expect(new Set(way.map(hashOf)).size).toBe(all);
    const home = way.toReversed();
    home.slice(0, -1).forEach((place, i) => expect(back(meeting, place)).toEqual(home[i + 1]));
    expect(back(meeting, START)).toEqual(START);
  });

  test('an address holds its place; one that is gone leads to the nearest', () => {
    expect(readHash(meeting, '#stage-2-3')).toEqual({ scene: 1, step: 2 });
    expect(readHash(meeting, '#stage-2')).toEqual({ scene: 1, step: 0 });
    expect(readHash(meeting, '#stage-99-9')).toEqual({ ...lastPlace(meeting), step: 1 });
    expect(readHash(meeting, '#stage-0-0')).toEqual(START);
    expect(readHash(meeting, '#scene-2')).toBeUndefined();
    expect(readHash(meeting, '')).toBeUndefined();
  });

  test('whatever stands behind the #, the place is one that is there', () => {
    const anything = fc.oneof(
      fc.string(),
      fc.string().map((text) => `#stage-${text}`),
    );
    fc.assert(
      fc.property(anything, (hash) => {
        const place = readHash(meeting, hash);
        if (place) expect(readHash(meeting, hashOf(place))).toEqual(place);
      }),
    );
  });
});
