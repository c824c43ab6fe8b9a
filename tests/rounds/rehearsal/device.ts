/** A device with a clock that the test turns, and what it keeps; a bank of 24 questions of every kind in three lessons. */
import { signal } from '@preact/signals';
import type { UnitSystem } from '../../../src/quantity/unit-system.ts';
import type { QuestionSet } from '../../../src/quiz/question-set.ts';
import { areas } from '../../../src/quiz/rehearsal/blueprint.ts';
import * as play from '../../../src/rounds/rehearsal/script.ts';
import { rehearsalModel, type Surroundings } from '../../../src/rounds/rehearsal/model.ts';
import type { RetrievalAnswer } from '../../../src/storage/answer.ts';
import { pastKeeper, underWayKeeper } from '../../../src/storage/rehearsals.ts';
import { best, worst } from '../../quiz/given.ts';
import { oneOfEach } from './kinds.ts';
import { fakeArea } from '../../storage/fake-area.ts';

const LESSONS = ['lesson-a', 'lesson-b', 'lesson-c'];
export const sets: readonly QuestionSet[] = LESSONS.map((lesson) => ({
  form: 1,
  lesson,
  objectives: [{ id: 'a-1', text: 'Say what a gauge reads.', section: 'a-section' }],
  questions: oneOfEach(lesson),
}));
const index = {
  form: 1 as const,
  lessons: LESSONS.map((id) => ({ id, title: id })),
  items: sets.flatMap(({ lesson, questions }) =>
    questions.map(({ id, concept, lookAlikes }, i) => ({
      ...{ id, concept, lookAlikes, lesson },
      area: areas[i] ?? 'fluid',
    })),
  ),
};

export function device() {
  const area = fakeArea();
  const units = signal<UnitSystem>('us');
  const answers: { n: number; at: number; clockSetBack: boolean; answer: RetrievalAnswer }[] = [];
  const state = {
    now: Date.parse('2026-11-29T09:00:00Z'),
    /** The log takes no more than so many answers, then the device dies. */
    logTakes: Number.POSITIVE_INFINITY,
  };
  const around: Surroundings = {
    now: () => state.now,
    underWay: underWayKeeper(area),
    pasts: pastKeeper(area),
    readAnswers: () => Promise.resolve({ status: 'ok', answers: [...answers], damaged: [] }),
    keepAnswer: (answer) => {
      if (answers.length >= state.logTakes) return Promise.resolve(false);
      answers.push({ n: answers.length + 1, at: state.now, clockSetBack: false, answer });
      return Promise.resolve(true);
    },
    loadIndex: () => Promise.resolve({ got: index }),
    loadPlay: () =>
      Promise.resolve({
        ...play,
        loadSets: (_base, lessons) =>
          Promise.resolve({ got: sets.filter(({ lesson }) => lessons.includes(lesson)) }),
      }),
    units,
    base: '/',
  };
  const visit = async (over: Partial<Surroundings> = {}) => {
    const model = rehearsalModel({ ...around, ...over });
    await model.look();
    return model;
  };
  return { area, answers, state, units, around, visit };
}
export type Visit = Awaited<ReturnType<ReturnType<typeof device>['visit']>>;

/** Puts down an answer to the question on show, whatever its kind, and how sure. */
export function putDown({ player }: Visit, right: boolean, sure: 1 | 2 | 3 | null = 2): void {
  const made = player.value;
  const asked = made?.question.value;
  if (made === undefined || asked === undefined) throw new Error('No question is on show.');
  const given = right ? best(asked) : worst(asked);
  if (given.kind === 'typed') made.type(`${given.text} kPa`);
  else made.give(given.ids);
  if (sure !== null) made.sure(sure);
}
/** To the end, every answer right where the test says so. */
export function answerAll(visit: Visit, right: (place: number) => boolean): void {
  while (visit.view.value.at === 'question') {
    putDown(visit, right(visit.rehearsal.value?.place ?? 0));
    if (!visit.onward('si')) throw new Error('The answer cannot stand.');
  }
}
