/** Each kind of question whole, as it is put on paper when nothing is mixed; worked out by hand from ../sample.ts. */
import { expect, test } from 'vitest';
import { putOnPaper } from '../../../src/quiz/on-paper/put.ts';
import type { Mix } from '../../../src/quiz/on-paper/put-parts.ts';
import { plain } from '../plain.ts';
import {
  amounts,
  ask,
  gap,
  match,
  number,
  order,
  several,
  shortCase,
  single,
  spot,
} from '../sample.ts';

const asWritten: Mix = (items) => items;
const backwards: Mix = (items) => [...items].reverse();
const why = (id: string, what = 'option') => [`Because ${what} ${id} is what it is.`];

test('one right answer of several options', () => {
  expect(plain(putOnPaper(ask(single), asWritten))).toEqual({
    id: 'q-single',
    stem: ['A gauge reads ', '600 kPa', '. What does it show?'],
    asks: 'one',
    options: [
      { letter: '1', words: ['The first thing'] },
      { letter: '2', words: ['A second thing'] },
      { letter: '3', words: ['Some third thing'] },
    ],
    right: { kind: 'letters', letters: ['1'] },
    reasons: [
      { letter: '1', words: ['The first thing'], correct: true, why: why('one') },
      { letter: '2', words: ['A second thing'], correct: false, why: why('two') },
      { letter: '3', words: ['Some third thing'], correct: false, why: why('three') },
    ],
  });
});

test('several right answers, mixed', () => {
  const put = putOnPaper(ask(several), backwards);
  expect(put.asks).toBe('several');
  expect(put.options?.map(({ words }) => words)).toEqual([
    ['Some third thing'],
    ['A second thing'],
    ['The first thing'],
  ]);
  expect(put.right).toEqual({ kind: 'letters', letters: ['2', '3'] });
  expect(put.reasons.map(({ correct }) => correct)).toEqual([false, true, true]);
});

test('amounts keep their order of size', () => {
  const put = putOnPaper(ask(amounts), backwards);
  expect(plain(put.options)).toEqual([
    { letter: '1', words: ['300 kPa'] },
    { letter: '2', words: ['400 kPa'] },
    { letter: '3', words: ['500 kPa'] },
  ]);
  expect(put.right).toEqual({ kind: 'letters', letters: ['2'] });
});

test('an amount to be written: the line has its unit, and the key says from where to where it counts', () => {
  // 400 kPa and 5 % of it either way; 1 psi is 6.894757 kPa.
  expect(plain(putOnPaper(ask(number), asWritten))).toEqual({
    id: 'q-number',
    stem: ['What pressure does the press need to lift this load?'],
    asks: 'amount',
    blank: { si: 'kPa', us: 'psi' },
    right: {
      kind: 'amount',
      words: ['400 kPa'],
      least: { si: '380', us: '55' },
      most: { si: '420', us: '61' },
    },
    reasons: [
      {
        words: ['400 kPa'],
        correct: true,
        why: ['Force over area, with the spring taken off first.'],
      },
      {
        words: ['300 kPa'],
        correct: false,
        mistake: 'forget the spring',
        why: ['The spring takes its share before the load moves.'],
      },
      {
        words: ['1600 kPa'],
        correct: false,
        mistake: 'take the diameter for the radius',
        why: ['Area goes with the square, so this is four times off.'],
      },
    ],
  });
});

test('steps to put in order, back to front', () => {
  // Level and codes may swap, so among themselves they keep the order in which the sheet has them.
  expect(plain(putOnPaper(ask(order), backwards))).toEqual({
    id: 'q-order',
    stem: ['A gauge reads ', '600 kPa', '. What does it show?'],
    asks: 'order',
    lines: [
      ['Drive it hot'],
      ['Read the codes'],
      ['Look at the level at ', '40 °C'],
      ['Chock the wheels'],
    ],
    right: { kind: 'order', numbers: [4, 2, 3, 1], swap: [[2, 3]] },
    reasons: [
      { letter: '1', words: ['Chock the wheels'], correct: true, why: why('chock', 'step') },
      { letter: '2', words: ['Read the codes'], correct: true, why: why('codes', 'step') },
      {
        letter: '3',
        words: ['Look at the level at ', '40 °C'],
        correct: true,
        why: why('level', 'step'),
      },
      { letter: '4', words: ['Drive it hot'], correct: true, why: why('drive', 'step') },
    ],
  });
});

test('an order is handed to whoever mixes with the means to see that it gives the answer away', () => {
  const said: boolean[] = [];
  putOnPaper(ask(order), (items, isAnswer) => {
    said.push(isAnswer?.(items) ?? false, isAnswer?.([...items].reverse()) ?? false);
    return items;
  });
  expect(said).toEqual([true, false]);
});

test('pairs, with something that goes with nothing', () => {
  const { partners } = ask(match) as { partners?: readonly { id: string }[] };
  const places = new Map(partners?.map(({ id }, place) => [id, 'ABCD'[place]]));
  const [both, one, every, extra] = ['both', 'one', 'all', 'extra'].map((id) => places.get(id));
  const put = plain(putOnPaper(ask(match), asWritten)) as { partners: object[] };
  expect(put).toEqual({
    id: 'q-match',
    stem: ['A gauge reads ', '600 kPa', '. What does it show?'],
    asks: 'match',
    lines: [['Drive and Reverse'], ['Reverse alone'], ['Every range']],
    partners: put.partners,
    right: { kind: 'letters', letters: [both, one, every] },
    reasons: [
      {
        letter: both,
        words: ['Drive and Reverse', ': ', 'Shared seal'],
        correct: true,
        why: ['Both are fed through it.'],
      },
      {
        letter: one,
        words: ['Reverse alone', ': ', 'Reverse piston'],
        correct: true,
        why: ['Only Reverse has it.'],
      },
      {
        letter: every,
        words: ['Every range', ': ', 'Pump'],
        correct: true,
        why: ['It feeds all of them.'],
      },
      {
        letter: extra,
        words: ['Park pawl'],
        correct: false,
        mark: 'withNothing',
        why: ['It holds the car and slips nowhere.'],
      },
    ],
  });
  expect(put.partners).toHaveLength(4);
  expect(put.partners).toContainEqual({ letter: extra, words: ['Park pawl'] });
});

const steps = [['Lift the car'], ['Go under it'], ['Start the engine']];

test('an unsafe step to be ticked', () => {
  expect(plain(putOnPaper(ask(spot), backwards))).toEqual({
    id: 'q-spot',
    stem: ['A gauge reads ', '600 kPa', '. What does it show?'],
    asks: 'step',
    options: steps.map((words, place) => ({ letter: String(place + 1), words })),
    right: { kind: 'letters', letters: ['2'] },
    reasons: [
      {
        ...{ letter: '1', words: steps[0], correct: false, mark: 'rightStep' },
        why: why('lift', 'step'),
      },
      { letter: '2', words: steps[1], correct: true, why: why('under', 'step') },
      {
        ...{ letter: '3', words: steps[2], correct: false, mark: 'rightStep' },
        why: why('engine', 'step'),
      },
    ],
  });
});

test('a place where a step is missing', () => {
  expect(plain(putOnPaper(ask(gap), backwards))).toEqual({
    id: 'q-gap',
    stem: ['A gauge reads ', '600 kPa', '. What does it show?'],
    asks: 'gap',
    steps,
    gaps: [0, 1, 2, 3],
    right: { kind: 'gaps', gaps: [1] },
    reasons: [
      { words: ['Set the stands'], correct: true, why: ['A jack is no stand at all.'] },
      ...steps.map((words, place) => ({
        ...{ letter: String(place + 1), words, correct: false, mark: 'rightStep' },
        why: why(['lift', 'under', 'engine'][place] ?? '', 'step'),
      })),
    ],
  });
});

test('a short case: readings with what they cost alone, and the cheapest that decide', () => {
  // A hot reading costs 2, 20 to warm the car, and 3 for the tool or 12 for the gauge.
  expect(plain(putOnPaper(ask(shortCase), backwards))).toEqual({
    id: 'q-case',
    stem: ['A gauge reads ', '600 kPa', '. What does it show?'],
    asks: 'fault',
    readings: [
      { words: ['The log'], minutes: 25, reads: [{ si: '400 kPa', us: '58 psi' }] },
      { words: ['The tap'], minutes: 34, reads: [{ si: '400 kPa', us: '58 psi' }] },
      { words: ['The line'], minutes: 34, reads: [{ si: '400 kPa', us: '58 psi' }] },
    ],
    options: [
      { letter: '1', words: ['Nothing at all'] },
      { letter: '2', words: ['The forward rings'] },
      { letter: '3', words: ['The shared seal'] },
    ],
    right: { kind: 'letters', letters: ['3'] },
    reasons: [
      { letter: '1', words: ['Nothing at all'], correct: false, why: why('none') },
      { letter: '2', words: ['The forward rings'], correct: false, why: why('rings') },
      { letter: '3', words: ['The shared seal'], correct: true, why: why('seal') },
    ],
    cheapest: {
      minutes: 25,
      readings: [{ words: ['The log'], why: ['Because log told it.'] }],
    },
  });
});
