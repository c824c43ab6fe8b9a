import { expect, test } from 'vitest';
import type { BankIndex } from '../../../src/quiz/bank-index.ts';
import type { QuestionSet } from '../../../src/quiz/question-set.ts';
import { classModel } from '../../../src/rounds/class/model.ts';
import { LONGEST_FILE } from '../../../src/storage/bundle/bundle.ts';
import type { Asked } from '../../../src/quiz/asked.ts';
import { writeBundle } from '../../../src/storage/bundle/bundle.ts';
import { answersFrom, classFile, emptyBundle, NOON } from './class-files.ts';

const item = (id: string, lesson: string, area: 'fluid' | 'log') => ({
  ...{ id, lesson, area, concept: id.replace(/\d+$/, '') },
  lookAlikes: [],
});
const index: BankIndex = {
  form: 1,
  lessons: [
    { id: 'gaps', title: 'Gaps' },
    { id: 'logs', title: 'Logs' },
  ],
  items: [
    ...['gap1', 'gap2', 'gap3', 'gap4'].map((id) => item(id, 'gaps', 'fluid')),
    ...['log1', 'log2'].map((id) => item(id, 'logs', 'log')),
  ],
};
const set = (lesson: string): QuestionSet => ({
  ...{ form: 1, lesson, objectives: [] },
  questions: [],
});

function page(asked: string[][] = []) {
  return classModel({
    now: () => NOON + 3_600_000,
    minutesWest: () => 0,
    loadIndex: () => Promise.resolve({ got: index }),
    loadSets: (lessons) => {
      asked.push([...lessons]);
      return Promise.resolve({ got: lessons.map(set) });
    },
  });
}
const file = (name: string, text: string) => new File([text], name);
const all = (result: string) => ['gap1', 'gap2', 'gap3', 'gap4'].map((id) => `${id} ${result}`);

test('two files make a class: its topics, who is strong where, and each question', async () => {
  const asked: string[][] = [];
  const model = page(asked);
  await model.take([
    file('a.json', classFile('Ana', [...all('right fairly'), 'log1 wrong certain'])),
    file('b.json', classFile(null, ['gap1 wrong guess', 'log1 wrong certain', 'log2 wrong guess'])),
  ]);
  await model.need();
  expect(model.said.value).toEqual([]);
  expect(model.members.value.map(model.nameOf)).toEqual(['Ana', 'Learner 2']);
  expect(model.topics.value).toMatchObject([{ concept: 'log', missed: 2, asked: 2, certain: 2 }]);
  const fluid = model.byArea.value.find(({ area }) => area === 'fluid');
  expect(fluid?.cells).toEqual([
    { asked: 4, solid: 4 },
    { asked: 1, solid: 0 },
  ]);
  expect(model.byArea.value).toHaveLength(8);
  expect(model.strong.value).toEqual([{ area: 'fluid', names: ['Ana'] }]);
  expect(model.items.value[0]).toMatchObject({ right: 0, answers: 2, p: undefined });
  // Each lesson once, and none that nobody was asked about.
  expect(asked.map((one) => one.toSorted())).toEqual([['gaps', 'logs']]);
  await model.need();
  expect(asked).toHaveLength(1);
});

test('what cannot be taken is said file by file, and the rest is taken', async () => {
  const model = page();
  await model.take([
    file('photo.json', 'not JSON'),
    file('empty.json', classFile('B', [])),
    file('good.json', classFile('Ana', ['gap1 right certain'])),
    file('again.json', classFile('Ana', ['gap1 right certain'])),
    new File([new Uint8Array(LONGEST_FILE + 1)], 'huge.json'),
  ]);
  expect(model.members.value).toHaveLength(1);
  expect(model.said.value).toEqual([
    expect.stringMatching(/^photo\.json: That file comes from somewhere else/),
    expect.stringMatching(/^empty\.json: this file holds no answer/),
    expect.stringMatching(/^again\.json: .*the file of Ana as well/),
    expect.stringMatching(/^huge\.json: That file is larger than 25 MB/),
  ]);
});

test('a name can be typed over, and taken back; somebody can be taken off', async () => {
  const model = page();
  await model.take([file('a.json', classFile(null, ['gap1 right certain']))]);
  const [one] = model.members.value;
  if (one === undefined) throw new Error('nobody is here');
  model.rename(one, '  Bay 2 ');
  const [renamed] = model.members.value;
  if (renamed === undefined) throw new Error('nobody is here');
  expect(model.nameOf(renamed)).toBe('Bay 2');
  model.rename(renamed, ' ');
  const [bare] = model.members.value;
  if (bare === undefined) throw new Error('nobody is here');
  expect(model.nameOf(bare)).toBe('Learner 1');
  model.remove(bare);
  expect(model.items.value).toEqual([]);
});

test('without a connection it says so, and asks again', async () => {
  let there = false;
  const model = classModel({
    now: () => NOON,
    minutesWest: () => 0,
    loadIndex: () => Promise.resolve(there ? { got: index } : { miss: 'offline' as const }),
    loadSets: (lessons) => Promise.resolve({ got: lessons.map(set) }),
  });
  await model.take([file('a.json', classFile('Ana', ['gap1 right certain']))]);
  await model.need();
  expect(model.miss.value).toBe('offline');
  there = true;
  await model.need();
  expect(model.miss.value).toBeUndefined();
  expect(model.index.value).toBeDefined();
});

test('a number that was typed counts for the named wrong rule of the variant that was asked', async () => {
  const number = (variant: string, wrong: number) => ({
    ...{ id: 'gap1', kind: 'number', variant, quantity: 'pressure', value: 400, within: 10 },
    ...{ stem: [], objectives: [], concept: 'gap', valueWords: [], why: [] },
    distractors: [{ rule: 'forgot', value: wrong, mistake: 'forget it', valueWords: [], why: [] }],
  });
  const question = { ...number('a', 450), others: [number('b', 500)] } as unknown as Asked;
  const model = classModel({
    now: () => NOON,
    minutesWest: () => 0,
    loadIndex: () => Promise.resolve({ got: index }),
    loadSets: (lessons) =>
      Promise.resolve({ got: lessons.map((one) => ({ ...set(one), questions: [question] })) }),
  });
  const typed = (text: string, variant: string, from: number) =>
    writeBundle({
      ...emptyBundle,
      answers: answersFrom(['gap1 wrong certain'], from).map(({ at, answer }) => ({
        at,
        answer: { ...answer, variant, given: { kind: 'typed', text, system: 'si' } },
      })),
    });
  await model.take([
    file('a.json', typed('450', 'a', NOON)),
    file('b.json', typed('500 kPa', 'b', NOON + 1)),
    // Of the other variant, so here it came from nothing that has a name.
    file('c.json', typed('450', 'b', NOON + 2)),
  ]);
  await model.need();
  const [one] = model.items.value;
  expect(one).toMatchObject({ item: 'gap1', answers: 3, right: 0, certainAndWrong: 3 });
  expect([...(one?.chosen ?? [])]).toEqual([['forgot', 2]]);
});
