import { ASKED, DAYS, placeOf } from '../../cases/answers.ts';
import { words as names } from '../../car/words.en.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { CIRCUITS } from '../../engine/index.ts';
import { listOf } from '../../quantity/lists.ts';
import { format, printer } from '../../quantity/print.ts';
import { count, percent } from '../../quantity/quantities.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { NOTHING_ASKED, worthAfter, type AskFirstGivens, type AskFirstModel } from './model.ts';
import { nameOf, printBits } from './print.ts';
import { words } from './words.en.ts';

/** The four questions of the prediction, and the answer that is in before them. */
const FOUR = ['warm', 'minutes', 'load', 'restart'] as const;
const BEFORE = { ranges: placeOf('ranges', 'both') };

const start = {
  ...NOTHING_ASKED,
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

/** Names whose shares differ by less than this are level [of the first's]. */
const LEVEL = 0.9;
/** More names than this are not "in front". */
const MOST_IN_FRONT = 3;

/** As a list of so many names: what the reader is told, and what tasks are judged by. */
export const openAs = (open: number): string => format(open, count, 'si');

export const sim: SimSpec<AskFirstGivens, AskFirstModel> = {
  id: 'ask-first',
  title: words.title,
  linkVersion: 1,
  controls: [
    {
      kind: 'choice',
      key: 'fault',
      label: controls.fault,
      options: NAMES.filter((name) => name !== 'unlisted').map((value) => ({
        value,
        words: nameOf(value),
      })),
      as: 'select',
    },
    ...ASKED.map((key) => ({
      kind: 'flag' as const,
      key,
      label: words.questions[key],
      on: controls.asked,
      off: controls.open,
    })),
    {
      kind: 'choice',
      key: 'circuit',
      label: controls.circuit,
      options: CIRCUITS.map((value) => ({ value, words: names.circuits[value] })),
      as: 'select',
    },
    {
      kind: 'choice',
      key: 'day',
      label: controls.day,
      options: DAYS.map((value) => ({ value, words: words.answers.road[value] })),
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
  says: ({ list, open, off, asked }, system) => {
    const all = format(NAMES.length, count, 'si');
    if (asked.value.length === 0) return says.whole({ names: all });
    const shares = list.value;
    const first = Math.max(...shares);
    const front = NAMES.filter((_name, i) => (shares[i] ?? 0) >= LEVEL * first);
    const [top] = front;
    const told = { off: format(off.value, count, 'si'), names: all };
    const rest = openAs(open.value);
    const left = rest === '1' ? says.settled(told) : says.list({ ...told, open: rest });
    if (top === undefined || front.length > MOST_IN_FRONT) return left;
    const leads =
      front.length === 1
        ? says.one({ name: nameOf(top), share: printer(system)(100 * first, percent) })
        : says.level({ names: listOf(front.map(nameOf)) });
    return `${left} ${leads}`;
  },
};
