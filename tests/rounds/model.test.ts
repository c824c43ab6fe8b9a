import { describe, expect, test } from 'vitest';
import type { QuestionSet } from '../../src/quiz/question-set.ts';
import { readDay } from '../../src/widgets/retrieval/read-day.ts';
import { questionsIn, todayModel, type Surroundings } from '../../src/rounds/model.ts';
import type { RetrievalAnswer } from '../../src/storage/answer.ts';
import { planKeeper } from '../../src/storage/plan.ts';
import type { AnswersRead } from '../../src/storage/read-answers.ts';
import { retrievalModel } from '../../src/widgets/retrieval/model.ts';
import { ask, single } from '../quiz/sample.ts';
import { fakeArea } from '../storage/fake-area.ts';

const DAY = 86_400_000;
const LESSONS = ['lesson-a', 'lesson-b', 'lesson-c'];
const sets: readonly QuestionSet[] = LESSONS.map((lesson) => ({
  form: 1,
  lesson,
  objectives: [{ id: 'a-1', text: 'Say what a gauge reads.', section: 'a-section' }],
  questions: Array.from({ length: 8 }, (_, i) =>
    ask({ ...single, id: `${lesson}-${i}`, concept: `${lesson}-${i % 4}` }),
  ),
}));
const index = {
  form: 1 as const,
  lessons: LESSONS.map((id) => ({ id, title: id })),
  items: sets.flatMap(({ lesson, questions }) =>
    questions.map(({ id, concept, lookAlikes }) => ({
      ...{ id, concept, lookAlikes, lesson },
      area: 'fluid' as const,
    })),
  ),
};

/** A device with a clock that the test turns, and what it keeps. */
function device() {
  const area = fakeArea();
  const answers: { n: number; at: number; clockSetBack: boolean; answer: RetrievalAnswer }[] = [];
  const state = { now: Date.parse('2026-11-29T09:00:00Z'), done: ['lesson-a'] as string[] };
  const around: Surroundings = {
    now: () => state.now,
    minutesWest: () => 0,
    keeper: planKeeper(area),
    done: () => state.done,
    readAnswers: (): Promise<AnswersRead> =>
      Promise.resolve({ status: 'ok', answers: [...answers], damaged: [] }),
    keepAnswer: (answer) =>
      void answers.push({ n: answers.length + 1, at: state.now, clockSetBack: false, answer }),
    loadIndex: () => Promise.resolve({ got: index }),
    loadPlayer: () =>
      Promise.resolve({
        retrievalModel,
        loadSets: (_base, lessons) =>
          Promise.resolve({ got: sets.filter(({ lesson }) => lessons.includes(lesson)) }),
      }),
    base: '/',
  };
  const visit = async (over: Partial<Surroundings> = {}) => {
    const model = todayModel({ ...around, ...over });
    await model.look();
    return model;
  };
  return { area, answers, state, visit };
}
type Visit = Awaited<ReturnType<ReturnType<typeof device>['visit']>>;

/** Answers the question that is on. */
function answerOne({ asking }: Visit, right: boolean, sure: 1 | 2 | 3 = 2): void {
  const player = asking.value?.player;
  const asked = player?.question.value;
  if (player === undefined || asked?.kind !== 'single') throw new Error('No question is on.');
  const option = asked.options.find(({ correct }) => correct === right);
  player.tick(option?.id ?? '');
  player.sure(sure);
  if (!player.check('si')) throw new Error('The answer did not count.');
  player.next();
}
async function answerAll(visit: Visit, right: (place: number) => boolean): Promise<number> {
  await visit.begin();
  let place = 0;
  while (visit.asking.value?.player.question.value !== undefined) answerOne(visit, right(place++));
  await visit.leave();
  return place;
}

test('a round takes as many questions as its minutes hold', () => {
  // 45 s each, as the lessons count them: 300 / 45, 600 / 45, 1200 / 45, rounded down.
  expect([5, 10, 20].map((minutes) => questionsIn(minutes as 5))).toEqual([6, 13, 26]);
});

test('who has done a lesson is asked its questions, who has done none those of the first', async () => {
  const { visit, state } = device();
  state.done = ['lesson-b'];
  const second = await visit();
  expect(second.beginner.value).toBe(false);
  expect(new Set(second.next.value.map(({ lesson }) => lesson))).toEqual(new Set(['lesson-b']));
  state.done = [];
  const none = await visit();
  expect(none.beginner.value).toBe(true);
  expect(new Set(none.next.value.map(({ lesson }) => lesson))).toEqual(new Set(['lesson-a']));
});

test('a wrong answer is due the next day, after the right ones later', async () => {
  const { visit, state } = device();
  const first = await visit();
  await answerAll(first, (place) => place !== 2);
  // Two of the lesson’s eight are left, and what was answered is not asked again today.
  expect(first.waits.value.due).toEqual([]);
  expect(first.waits.value.fresh).toHaveLength(2);
  state.now += DAY;
  const wrong = (await visit()).waits.value.due.map(({ id }) => id);
  expect(wrong).toHaveLength(1);
  state.now += 30 * DAY;
  expect((await visit()).waits.value.due).toHaveLength(6);
});

describe('a round that was left', () => {
  test('is over with its last answer, though the page goes before anybody leaves it', async () => {
    const { area, visit } = device();
    const model = await visit();
    await model.begin();
    for (let place = 0; place < 5; place += 1) answerOne(model, true);
    expect(planKeeper(area).read().data.round).not.toBeNull();
    answerOne(model, true);
    expect(planKeeper(area).read().data.round).toBeNull();
    expect(model.asking.value?.player.stage.value).toBe('over');
  });

  test('waits with its place after a reload, and its answers are not kept twice', async () => {
    const { visit, answers } = device();
    const before = await visit();
    await before.begin();
    const order = before.asking.value?.player.session.value?.questions.map(({ id }) => id);
    answerOne(before, true);
    answerOne(before, false, 3);
    // The tab dies here.
    const after = await visit();
    expect(after.kept.value?.done).toBe(2);
    await after.goOn();
    const { player } = after.asking.value ?? {};
    expect(player?.session.value?.questions.map(({ id }) => id)).toEqual(order);
    expect(player?.place.value).toBe(3);
    while (player?.question.value !== undefined) answerOne(after, true);
    expect(player?.summary.value).toMatchObject({ asked: 6, right: 5 });
    expect(answers).toHaveLength(6);
    await after.leave();
    expect(after.kept.value).toBeUndefined();
  });

  test('is not taken up on another day, and its answers count', async () => {
    const { visit, state } = device();
    const before = await visit();
    await before.begin();
    answerOne(before, false);
    state.now += DAY;
    const after = await visit();
    expect(after.kept.value).toBeUndefined();
    expect(after.waits.value.due).toHaveLength(1);
  });

  test('can be dropped', async () => {
    const { visit } = device();
    const before = await visit();
    await before.begin();
    answerOne(before, true);
    await before.leave();
    expect(before.kept.value?.done).toBe(1);
    before.drop();
    expect(before.kept.value).toBeUndefined();
    expect((await visit()).kept.value).toBeUndefined();
  });
});

describe('the date of an exam', () => {
  test.each([
    ['', 'noDate'],
    ['2026-02-30', 'noDate'],
    ['2026-11-29', 'tooSoon'],
    ['2025-01-01', 'tooSoon'],
    ['2029-11-29', 'tooFar'],
  ] as const)('"%s" is refused as %s, and the date before stays', async (text, fault) => {
    const { visit } = device();
    const model = await visit();
    expect(model.setExam('2026-12-20')).toBe(true);
    expect(model.setExam(text)).toBe(false);
    expect(model.examFault.value).toBe(fault);
    expect(model.exam.value).toBe(readDay('2026-12-20'));
  });

  test('opens all lessons, and nothing comes on its day', async () => {
    const { visit, state } = device();
    const model = await visit();
    model.setExam('2026-12-20');
    expect(model.waits.value.fresh).toHaveLength(24);
    // 21 days to go, the last three kept free of new ones: 24 / 18, rounded up.
    expect(model.waits.value.freshToday).toBe(2);
    state.now = Date.parse('2026-12-20T07:00:00Z');
    const onTheDay = await visit();
    expect(onTheDay.next.value).toEqual([]);
    onTheDay.clearExam();
    expect(onTheDay.next.value.length).toBeGreaterThan(0);
  });
});

describe('what can go wrong', () => {
  test('questions that do not come are said, and nothing begins', async () => {
    const { visit } = device();
    const offline = await visit({ loadIndex: () => Promise.resolve({ miss: 'offline' }) });
    expect([offline.miss.value, offline.ready.value]).toEqual(['offline', false]);
    const stuck = await visit({ loadPlayer: () => Promise.reject(new Error('gone')) });
    await stuck.begin();
    expect([stuck.miss.value, stuck.asking.value]).toEqual(['stuck', undefined]);
    // The round that was begun waits.
    expect(stuck.kept.value?.done).toBe(0);
  });

  test('a browser that keeps nothing still asks, and remembers until the page closes', async () => {
    const { visit, area } = device();
    area.failWrites = { on: /./u, as: 'SecurityError' };
    const model = await visit({
      readAnswers: () => Promise.resolve({ status: 'blocked', answers: [], damaged: [] }),
      keepAnswer: () => undefined,
    });
    model.setMinutes(10);
    expect([model.plan.value.minutes, model.planNotKept.value]).toEqual([10, true]);
    await model.begin();
    const first = model.asking.value?.player.question.value?.id;
    answerOne(model, true);
    expect(model.waits.value.fresh.map(({ id }) => id)).not.toContain(first);
  });

  test('a question that is gone from the site is left out of the round that was begun', async () => {
    const { visit } = device();
    const before = await visit();
    await before.begin();
    const gone = before.asking.value?.player.question.value?.id;
    const after = await visit({
      loadPlayer: () =>
        Promise.resolve({
          retrievalModel,
          loadSets: () =>
            Promise.resolve({
              got: sets.map((set) => ({
                ...set,
                questions: set.questions.filter(({ id }) => id !== gone),
              })),
            }),
        }),
    });
    await after.goOn();
    expect(after.asking.value?.player.count).toBe(5);
  });
});

describe('a question that varies', () => {
  const base = ask({ ...single, id: 'lesson-a-0', concept: 'lesson-a-0' });
  const others = ['b', 'c'].map((variant) => ({ ...base, variant }));
  const varied = { ...base, variant: 'a', others };
  const only = sets.slice(0, 1).map((set) => ({ ...set, questions: [varied] }));
  const index1 = { ...index, items: index.items.filter(({ id }) => id === base.id) };
  const over: Partial<Surroundings> = {
    loadIndex: () => Promise.resolve({ got: index1 }),
    loadPlayer: () =>
      Promise.resolve({ retrievalModel, loadSets: () => Promise.resolve({ got: only }) }),
  };
  const shown = (visit: Visit) => visit.asking.value?.player.question.value?.variant;

  test('is asked in one variant, which the answer keeps, and in the same one after a reload', async () => {
    const { visit, answers } = device();
    const before = await visit(over);
    await before.begin();
    const variant = shown(before);
    const reloaded = await visit(over);
    await reloaded.goOn();
    expect(shown(reloaded)).toBe(variant);
    answerOne(reloaded, true);
    expect(answers.map(({ answer }) => answer.variant)).toEqual([variant]);
  });

  test('comes back in another one on another day, until all were seen', async () => {
    const { visit, answers, state } = device();
    for (let day = 0; day < 3; day += 1) {
      const today = await visit(over);
      await today.begin();
      answerOne(today, false);
      await today.leave();
      state.now += 2 * DAY;
    }
    expect(new Set(answers.map(({ answer }) => answer.variant)).size).toBe(3);
  });
});
