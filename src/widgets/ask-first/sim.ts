import { ASKED, DAYS, placeOf } from '../../cases/answers.ts';
import { words as names } from '../../car/words.en.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { CIRCUITS } from '../../engine/index.ts';
import { listOf } from '../../quantity/lists.ts';
import { count } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { CARS, DEALT } from './dealt.ts';
import { isLevel, MOST_IN_FRONT } from './front.ts';
import { NOTHING_ASKED, worthAfter, type AskFirstGivens, type AskFirstModel } from './model.ts';
import { nameOf, printBits, printCount, printShare } from './print.ts';
import { verdictOf } from './verdict.ts';
import { words } from './words.en.ts';

/** The four questions of the prediction, and the answer that is in before them. */
const FOUR = ['warm', 'minutes', 'load', 'restart'] as const;
const BEFORE = { ranges: placeOf('ranges', 'both') };

const start = {
  ...NOTHING_ASKED,
  named: 'none',
  fault: 'transferSeal',
  circuit: 'forward',
  day: 'overnight-flat',
  ranges: true,
} as const;
const end = { warm: true, minutes: true, load: true, restart: true };

const worths = () => {
  const [warm, minutes, load, restart] = FOUR.map((question) => worthAfter(BEFORE, question));
  return {
    warm: printBits(warm ?? 0),
    minutes: printBits(minutes ?? 0),
    load: printBits(load ?? 0),
    restart: printBits(restart ?? 0),
  };
};
const { options, ...predict } = told(words.predict, worths);
const { controls, says } = words;

/** As a list of so many names: what the reader is told, and what tasks are judged by. */
export const openAs = printCount;

/** Whatever a car can have that the list knows. */
const KNOWN = NAMES.filter((name) => name !== 'unlisted').map((value) => ({
  value,
  words: nameOf(value),
}));
const dealt = { value: DEALT, words: controls.dealt };

export const sim: SimSpec<AskFirstGivens, AskFirstModel> = {
  id: 'ask-first',
  title: words.title,
  linkVersion: 2,
  // The questions, and what they are asked for; what a foreman chooses himself is folded away.
  open: ASKED.length + 2,
  controls: [
    numberControl('car', controls.car, count, CARS),
    ...ASKED.map((key) => ({
      kind: 'flag' as const,
      key,
      label: words.questions[key],
      on: controls.asked,
      off: controls.open,
    })),
    {
      kind: 'choice',
      key: 'named',
      label: controls.named,
      options: [
        { value: 'none', words: controls.none },
        ...KNOWN,
        { value: 'shown', words: controls.shown },
      ],
      as: 'select',
    },
    {
      kind: 'choice',
      key: 'fault',
      label: controls.fault,
      options: [dealt, ...KNOWN],
      as: 'select',
    },
    {
      kind: 'choice',
      key: 'circuit',
      label: controls.circuit,
      options: [dealt, ...CIRCUITS.map((value) => ({ value, words: names.circuits[value] }))],
      as: 'select',
    },
    {
      kind: 'choice',
      key: 'day',
      label: controls.day,
      options: [dealt, ...DAYS.map((value) => ({ value, words: words.answers.road[value] }))],
      as: 'select',
    },
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    runMs: 600,
    outcome: ({ open }) => {
      const most = FOUR.reduce((one, other) =>
        worthAfter(BEFORE, other) > worthAfter(BEFORE, one) ? other : one,
      );
      const left = openAs(open.value);
      return { option: most, words: words.outcome({ ...worths(), open: left }) };
    },
  },
  says: (model) => {
    const { list, open, off, asked } = model;
    const judged = verdictOf(model);
    if (judged !== '') return judged;
    const all = printCount(NAMES.length);
    if (asked.value.length === 0) return says.whole({ names: all });
    const shares = list.value;
    const first = Math.max(...shares);
    const front = NAMES.filter((_name, i) => isLevel(shares[i] ?? 0, first));
    const [top] = front;
    const told = { off: printCount(off.value), names: all };
    const rest = openAs(open.value);
    const left = rest === '1' ? says.settled(told) : says.list({ ...told, open: rest });
    if (top === undefined || front.length > MOST_IN_FRONT) return left;
    const leads =
      front.length === 1
        ? says.one({ name: nameOf(top), share: printShare(first) })
        : says.level({ names: listOf(front.map(nameOf)) });
    return `${left} ${leads}`;
  },
};
