import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Asked } from '../../src/quiz/asked.ts';
import { grade, type Given } from '../../src/quiz/grade.ts';
import {
  answer,
  current,
  next,
  startSession,
  summarise,
  type Session,
} from '../../src/quiz/session.ts';
import { best, worst } from './given.ts';
import { ask, asked, forms } from './sample.ts';

function step(session: Session, given: (q: Asked) => Given, certainty: 1 | 2 | 3): Session {
  const q = current(session);
  if (q === undefined) throw new Error('over');
  const answered = answer(session, given(q), certainty);
  if (!answered.ok) throw new Error(answered.sentence);
  return answered.session;
}

test('one seed, one order; another seed, sooner or later another', () => {
  const order = (seed: number) => JSON.stringify(startSession(asked, seed).questions);
  expect(order(7)).toBe(order(7));
  expect(new Set([1, 2, 3, 4, 5, 6].map(order)).size).toBeGreaterThan(3);
});

test('where somebody has put them in order they are asked in it', () => {
  const ids = asked.map(({ id }) => id);
  for (const seed of [1, 2, 3, 4, 5, 6])
    expect(startSession(asked, seed, 'kept').questions.map(({ id }) => id)).toEqual(ids);
});

test('options move with the seed, amounts stay in order', () => {
  const positions = new Set<number>();
  for (let seed = 0; seed < 40; seed += 1) {
    for (const q of startSession(asked, seed).questions) {
      if (q.id === 'q-amounts' && q.kind === 'single')
        expect(q.options.map((o) => o.id)).toEqual(['low', 'mid', 'high']);
      if (q.id === 'q-single' && q.kind === 'single')
        positions.add(q.options.findIndex((o) => o.correct));
    }
  }
  expect(positions).toEqual(new Set([0, 1, 2]));
});

test('steps are never shown in a right order, partners move, a job keeps its order', () => {
  const shown = forms.map(ask);
  const partners = new Set<number>();
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      for (const q of startSession(shown, seed, 'kept').questions) {
        const as = shown.find(({ id }) => id === q.id);
        if (q.kind === 'order') {
          const ids = q.steps.map(({ id }) => id);
          const graded = grade(q, { kind: 'chosen', ids }, 1);
          expect(graded.ok && graded.outcome.right).toBe(false);
          expect([...ids].sort()).toEqual(['chock', 'codes', 'drive', 'level']);
        }
        if (q.kind === 'match') partners.add(q.partners.findIndex(({ id }) => id === 'extra'));
        if (q.kind === 'spot') expect(q).toEqual(as);
      }
    }),
  );
  expect(partners.size).toBe(4);
});

test('nothing is lost or doubled by shuffling, and one concept does not follow itself while another waits', () => {
  const doubled = [...asked, ...asked.map((q) => ({ ...q, id: `${q.id}-b` }))];
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const { questions } = startSession(doubled, seed);
      expect(questions.map((q) => q.id).sort()).toEqual(doubled.map((q) => q.id).sort());
      for (let i = 1; i < questions.length - 2; i += 1) {
        const rest = questions.slice(i).map((q) => q.concept);
        const before = questions[i - 1]?.concept;
        if (rest.some((c) => c !== before)) expect(rest[0]).not.toBe(before);
      }
    }),
  );
});

test('the explanation stays until next; then the next question; then nothing', () => {
  let s = startSession(asked, 3);
  const first = current(s);
  s = step(s, best, 3);
  expect(current(s)).toBe(first);
  expect(() => answer(s, best(first as Asked), 1)).toThrow(/answered already/);
  s = next(s);
  expect(current(s)).not.toBe(first);
  while (current(s) !== undefined) s = next(step(s, best, 3));
  expect(s.answers).toHaveLength(asked.length);
  expect(() => answer(s, { kind: 'chosen', ids: [] }, 1)).toThrow(/Every question/);
});

test('certainty is asked for before anything is revealed', () => {
  const s = startSession(asked, 3);
  const q = current(s) as Asked;
  const answered = answer(s, best(q), undefined);
  expect(answered).toEqual({
    ok: false,
    missing: 'certainty',
    sentence: 'Say how sure you are first: it counts only before you know.',
  });
  expect(s.answers).toHaveLength(0);
});

test('the summary counts marks, calibration, and puts confident errors first', () => {
  let s = startSession(asked, 11);
  s = next(step(s, best, 2));
  s = next(step(s, worst, 1));
  s = next(step(s, worst, 3));
  s = next(step(s, best, 3));
  const sum = summarise(s);
  expect(sum).toMatchObject({ asked: 4, right: 2, marks: 2 + 0 - 6 + 3, best: 12 });
  expect(sum.calibration).toEqual([
    { certainty: 1, said: 1, right: 0 },
    { certainty: 2, said: 1, right: 1 },
    { certainty: 3, said: 2, right: 1 },
  ]);
  expect(sum.again.map((a) => a.certainty)).toEqual([3, 1]);
  expect(sum.again[0]?.id).toBe(s.questions[2]?.id);
});

test('an empty session is refused', () => {
  expect(() => startSession([], 1)).toThrow(/at least one/);
});
