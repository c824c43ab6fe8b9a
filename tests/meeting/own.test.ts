import { expect, test } from 'vitest';
import { lacking, shownOf } from '../../src/meeting/own.ts';
import type { Asked } from '../../src/quiz/asked.ts';
import type { OwnPlan } from '../../src/storage/meetings/own-meeting.ts';
import { moved } from '../../src/stage/own/model.ts';

const plan: OwnPlan = {
  title: ' ',
  minutes: 5,
  scenes: [
    { kind: 'say', heading: '', lines: ['', ' '], notes: '' },
    {
      ...{ kind: 'vote', heading: 'H', stem: '', options: ['a', '', 'c'], right: 1 },
      why: '',
      notes: '',
    },
    { kind: 'simulation', heading: 'S', href: '/glossary/', notes: '' },
    { kind: 'question', heading: 'Q', lesson: 'live-data', id: 'gone', notes: 'n' },
  ],
};

test('whatever is missing is told with its scene', () => {
  expect(lacking(plan).map(({ scene, what }) => `${scene ?? '-'} ${what}`)).toEqual([
    '- title',
    '0 heading',
    '0 lines',
    '1 stem',
    '1 right',
    '2 simulation',
  ]);
  expect(lacking({ ...plan, title: 'T', scenes: [] })).toEqual([{ what: 'scenes' }]);
});

test('empty options and lines do not come onto the wall, and the right one stays right', () => {
  const vote = { ...plan.scenes[1], right: 2, why: 'So.' } as OwnPlan['scenes'][number];
  const shown = shownOf('x', { ...plan, scenes: [vote] }, new Map());
  expect(shown.scenes[0]).toMatchObject({
    kind: 'vote',
    options: [
      { words: ['a'], correct: false, why: [] },
      { words: ['c'], correct: true, why: ['So.'] },
    ],
  });
});

test('each option says its own why; from before there was one for each, the right one alone does', () => {
  const whys = (why: string | string[]) => {
    const vote = { ...plan.scenes[1], right: 2, why } as OwnPlan['scenes'][number];
    const [scene] = shownOf('x', { ...plan, scenes: [vote] }, new Map()).scenes;
    return scene?.kind === 'vote' ? scene.options.map((option) => option.why) : [];
  };
  expect(whys(['Not a.', 'gone', 'So.'])).toEqual([['Not a.'], ['So.']]);
  expect(whys(['', '', 'So.'])).toEqual([[], ['So.']]);
  expect(whys(['Not a.'])).toEqual([['Not a.'], []]);
  expect(whys('So.')).toEqual([[], ['So.']]);
});

test('a question that the site has no more leaves its scene with its notes', () => {
  const scene = shownOf('x', plan, new Map()).scenes[3];
  expect(scene).toMatchObject({ kind: 'say', heading: 'Q', notes: ['n'] });
});

test('a question of the course keeps the lesson that a phone is sent to', () => {
  const asked = {
    ...{ id: 'gone', kind: 'single', stem: ['Which?'] },
    options: [{ words: ['a'], correct: true, why: [] }],
  } as unknown as Asked;
  const scene = shownOf('x', plan, new Map([['live-data/gone', asked]])).scenes[3];
  expect(scene).toMatchObject({ kind: 'vote', lesson: 'live-data', stem: ['Which?'] });
});

test('a scene is moved by one, and off the ends nothing moves', () => {
  expect(moved(['a', 'b', 'c'], 0, 1)).toEqual(['b', 'a', 'c']);
  expect(moved(['a', 'b', 'c'], 2, -1)).toEqual(['a', 'c', 'b']);
  expect(moved(['a', 'b'], 0, -1)).toEqual(['a', 'b']);
  expect(moved(['a', 'b'], 1, 1)).toEqual(['a', 'b']);
});
