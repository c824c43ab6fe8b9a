import { expect, test } from 'vitest';
import { retrievalModel, type Earlier } from '../../src/widgets/retrieval/model.ts';
import { best } from '../quiz/given.ts';
import { asked } from '../quiz/sample.ts';

const answerRight = (model: ReturnType<typeof retrievalModel>): void => {
  const q = model.question.value;
  if (q === undefined) throw new Error('nothing asked');
  const given = best(q);
  if (given.kind === 'typed') model.type(`${given.text} kPa`);
  else model.give(given.ids);
};

test('offered, then covered and asking; nothing is covered before start', () => {
  const model = retrievalModel(asked);
  expect([model.stage.value, model.covered.value]).toEqual(['offered', false]);
  model.start(5);
  expect([model.stage.value, model.covered.value, model.place.value]).toEqual(['asking', true, 1]);
});

test('checking without an answer, then without certainty, says so at that place and keeps what was given', () => {
  const model = retrievalModel(asked);
  model.start(5);
  expect(model.check('us')).toBe(false);
  expect(model.complaint.value?.place).toBe('answer');
  answerRight(model);
  expect(model.complaint.value).toBeUndefined();
  const kept = [...model.ticked.value, model.typed.value];
  expect(model.check('us')).toBe(false);
  expect(model.complaint.value?.place).toBe('certainty');
  expect([...model.ticked.value, model.typed.value]).toEqual(kept);
  model.sure(2);
  expect(model.check('us')).toBe(true);
  expect(model.stage.value).toBe('explained');
  expect(model.last.value?.outcome).toMatchObject({ right: true, marks: 2 });
});

test('one choice replaces the other, ticks add up', () => {
  const model = retrievalModel(asked);
  for (let seed = 0; seed < 9; seed += 1) {
    model.start(seed);
    const q = model.question.value;
    if (q?.kind === 'single' || q?.kind === 'several') {
      model.tick(q.options[0]?.id ?? '');
      model.tick(q.options[1]?.id ?? '');
      expect(model.ticked.value).toHaveLength(q.kind === 'single' ? 1 : 2);
      model.tick(q.options[1]?.id ?? '');
      expect(model.ticked.value).toHaveLength(1);
    }
  }
});

test('showing the lesson pauses and loses nothing; carrying on covers it again', () => {
  const model = retrievalModel(asked);
  model.start(5);
  answerRight(model);
  const given = [model.ticked.value, model.typed.value];
  const id = model.question.value?.id;
  model.uncover();
  expect([model.stage.value, model.covered.value]).toEqual(['paused', false]);
  model.carryOn();
  expect(model.stage.value).toBe('asking');
  expect(model.question.value?.id).toBe(id);
  expect([model.ticked.value, model.typed.value]).toEqual(given);
});

test('at the end the lesson is shown again, with a summary; starting again starts clean', () => {
  const model = retrievalModel(asked);
  model.start(5);
  for (let i = 0; i < asked.length; i += 1) {
    answerRight(model);
    model.sure(3);
    expect(model.check('si')).toBe(true);
    expect(model.check('si')).toBe(false);
    model.next();
    expect([model.ticked.value, model.typed.value, model.certainty.value]).toEqual([
      [],
      '',
      undefined,
    ]);
  }
  expect([model.stage.value, model.covered.value]).toEqual(['over', false]);
  expect(model.summary.value).toMatchObject({ asked: 4, right: 4, marks: 12, best: 12, again: [] });
  model.start(6);
  expect([model.stage.value, model.place.value]).toEqual(['asking', 1]);
});

test('a bare number is read in the unit system of the reader', () => {
  const model = retrievalModel(asked.filter((q) => q.kind === 'number'));
  for (const [system, text] of [
    ['si', '400'],
    ['us', '58'],
  ] as const) {
    model.start(1);
    model.type(text);
    model.sure(1);
    model.check(system);
    expect(model.last.value?.outcome.right, system).toBe(true);
  }
});

test('each answer that counts is handed out once, with what was given and how it went', () => {
  const counted: unknown[] = [];
  const model = retrievalModel(
    asked.filter((q) => q.kind === 'number'),
    (one) => counted.push(one),
  );
  model.start(7);
  model.type('lots');
  model.sure(2);
  expect(model.check('si')).toBe(false);
  expect(counted).toEqual([]);
  model.type('1600');
  model.check('si');
  model.check('si');
  const given = { kind: 'typed', text: '1600', system: 'si' };
  expect(counted).toEqual([{ item: 'q-number', seed: 7, given, result: 'wrong', certainty: 2 }]);
});

test('a round that was left goes on with the same questions, behind those that were answered', () => {
  const counted: Earlier[] = [];
  const model = retrievalModel(asked, (one) => counted.push(one));
  const drawn = model.start(7);
  const order = model.session.value?.questions.map(({ id }) => id);
  while (counted.length < 2) {
    answerRight(model);
    model.sure(2);
    expect(model.check('si')).toBe(true);
    model.next();
  }
  const marks = model.summary.value?.marks;

  const again: unknown[] = [];
  const later = retrievalModel(asked, (one) => again.push(one));
  expect(later.start(7, drawn)).toEqual(drawn);
  later.takeUp(counted);
  expect(later.session.value?.questions.map(({ id }) => id)).toEqual(order);
  expect([later.place.value, later.stage.value]).toEqual([3, 'asking']);
  expect(later.summary.value?.marks).toBe(marks);
  expect(again, 'nothing is kept twice').toEqual([]);
});

test('of a round that was left, a question that is gone since is left out; of one that is gone whole a new one is drawn', () => {
  const model = retrievalModel(asked);
  expect(model.start(7, ['q-single', 'gone'])).toEqual(['q-single']);
  expect(model.start(7, ['gone']).length).toBe(model.count);
});
