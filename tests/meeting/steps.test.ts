import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Scene, VoteScene } from '../../src/meeting/meeting.ts';
import {
  back,
  explained,
  hashOf,
  lastPlace,
  next,
  readHash,
  START,
  stepOfWhy,
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

describe('why each option is so, or not', () => {
  const chart = { title: 'A chart' } as unknown as NonNullable<VoteScene['chart']>;
  const options = [false, true, false, false].map((correct, i) => ({
    ...{ words: [`option ${i}`], correct },
    why: [`why ${i}`],
  }));
  const vote = (count: number, more: Partial<VoteScene> = {}): VoteScene => ({
    ...{ ...common, kind: 'vote', stem: ['?'], options: options.slice(0, count) },
    ...more,
  });
  const told = (scene: VoteScene) => stepsOf(scene).map((_, step) => explained(scene, step));

  test('all at once with the answer, where they fit on the wall', () => {
    expect(told(vote(3))).toEqual([[], [], [0, 1, 2]]);
    expect(stepOfWhy(vote(3), 0)).toBeUndefined();
  });

  test.each([
    ['four options', vote(4), [[], [], [1], [0], [2], [3]]],
    ['a chart', vote(3, { chart }), [[], [], [1], [0], [2]]],
    ['long words', vote(3, { stem: ['word '.repeat(180)] }), [[], [], [1], [0], [2]]],
  ])('one after the other, the right one first, with %s', (_, scene, steps) => {
    expect(told(scene)).toEqual(steps);
    expect(scene.options.map((_, i) => explained(scene, stepOfWhy(scene, i) ?? 0))).toEqual(
      scene.options.map((_, i) => [i]),
    );
  });

  test('an option that says nothing waits for nothing', () => {
    const silent = options.map((one, i) => (i === 2 ? { ...one, why: [] } : one));
    const scene = vote(4, { options: silent });
    expect(told(scene)).toEqual([[], [], [1], [0], [3]]);
    expect(stepOfWhy(scene, 2)).toBeUndefined();
  });

  test('going on leaves out what it is told to, and so does going back, to the end of a meeting', () => {
    const two = { scenes: [vote(4), vote(4)] };
    const leftOut = ({ step }: { readonly step: number }): boolean => step === 3 || step === 5;
    expect(next(two, { scene: 0, step: 2 }, leftOut)).toEqual({ scene: 0, step: 4 });
    expect(next(two, { scene: 0, step: 4 }, leftOut)).toEqual({ scene: 1, step: 0 });
    expect(back(two, { scene: 1, step: 0 }, leftOut)).toEqual({ scene: 0, step: 4 });
    expect(back(two, { scene: 0, step: 4 }, leftOut)).toEqual({ scene: 0, step: 2 });
    const end = { scene: 1, step: 4 };
    expect(next(two, end, leftOut)).toBe(end);
  });
});
