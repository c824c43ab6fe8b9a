/** Small questions and numbers for the quiz tests; no engine, no real content. */
import type {
  MatchQuestion,
  NumberQuestion,
  OrderQuestion,
  Question,
  SpotQuestion,
} from '../../src/quiz/schema.ts';
import { resolveQuestion, type KeyNumber } from '../../src/quiz/resolve.ts';

export const numbers: Record<string, KeyNumber> = {
  'press-needed': {
    quantity: 'pressure',
    value: 400,
    wrong: {
      'forgot-spring': { mistake: 'forget the spring', value: 300 },
      'took-diameter': { mistake: 'take the diameter for the radius', value: 1600 },
    },
  },
};
export const lookup = (key: string): KeyNumber => {
  const found = numbers[key];
  if (found === undefined) throw new Error(`no number "${key}"`);
  return found;
};

const option = (id: string, text: string, correct = false) => ({
  id,
  text,
  correct,
  why: `Because option ${id} is what it is.`,
});

export const single: Question = {
  id: 'q-single',
  lesson: 'lesson-a',
  objectives: ['a-1'],
  concept: 'gap',
  kind: 'single',
  level: 'recall',
  unseen: false,
  stem: 'A gauge reads {pressure 600}. What does it show?',
  options: [
    option('one', 'The first thing', true),
    option('two', 'A second thing'),
    option('three', 'Some third thing'),
  ],
  source: 'engine',
};

export const several: Question = {
  ...single,
  id: 'q-several',
  concept: 'hole',
  kind: 'several',
  options: [
    option('one', 'The first thing', true),
    option('two', 'A second thing', true),
    option('three', 'Some third thing'),
  ],
};

export const amounts: Question = {
  ...single,
  id: 'q-amounts',
  concept: 'size',
  options: [
    option('low', '{pressure 300}'),
    option('mid', '{pressure 400}', true),
    option('high', '{pressure 500}'),
  ],
};

export const number: NumberQuestion = {
  id: 'q-number',
  lesson: 'lesson-a',
  objectives: ['a-1'],
  concept: 'area',
  kind: 'number',
  level: 'apply',
  unseen: true,
  stem: 'What pressure does the press need to lift this load?',
  number: {
    key: 'press-needed',
    quantity: 'pressure',
    tolerance: { relative: 0.05 },
    why: 'Force over area, with the spring taken off first.',
    distractors: [
      { rule: 'forgot-spring', why: 'The spring takes its share before the load moves.' },
      { rule: 'took-diameter', why: 'Area goes with the square, so this is four times off.' },
    ],
    entry: 'type',
  },
  source: 'engine',
};

export const all: readonly Question[] = [single, several, amounts, number];
export const asked = all.map((q) => resolveQuestion(q, lookup));

const step = (id: string, text: string) => ({
  id,
  text,
  why: `Because step ${id} is what it is.`,
});
const { id, lesson, objectives, concept, level, unseen, stem, source } = single;
const common = { id, lesson, objectives, concept, level, unseen, stem, source };

export const order: OrderQuestion = {
  ...common,
  id: 'q-order',
  kind: 'order',
  steps: [
    step('chock', 'Chock the wheels'),
    step('level', 'Look at the level at {temperature 40}'),
    step('codes', 'Read the codes'),
    step('drive', 'Drive it hot'),
  ],
  anyOrder: [['level', 'codes']],
};
export const match: MatchQuestion = {
  ...common,
  id: 'q-match',
  kind: 'match',
  pairs: [
    {
      id: 'both',
      left: 'Drive and Reverse',
      right: 'Shared seal',
      why: 'Both are fed through it.',
    },
    { id: 'one', left: 'Reverse alone', right: 'Reverse piston', why: 'Only Reverse has it.' },
    { id: 'all', left: 'Every range', right: 'Pump', why: 'It feeds all of them.' },
  ],
  extra: { text: 'Park pawl', why: 'It holds the car and slips nowhere.' },
};
export const spot: SpotQuestion = {
  ...common,
  id: 'q-spot',
  kind: 'spot',
  steps: [
    step('lift', 'Lift the car'),
    step('under', 'Go under it'),
    step('engine', 'Start the engine'),
  ],
  unsafe: 'under',
};
export const gap: SpotQuestion = {
  ...common,
  id: 'q-gap',
  kind: 'spot',
  steps: spot.steps,
  missing: { after: ['lift'], text: 'Set the stands', why: 'A jack is no stand at all.' },
};
export const forms: readonly Question[] = [order, match, spot, gap];
export const ask = (q: Question) => resolveQuestion(q, lookup);
