import { placeOf, type Day } from '../../cases/answers.ts';
import { minutesUntil } from '../../cases/days.ts';
import { carOf } from '../../cases/talk-cars.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { printer } from '../../quantity/print.ts';
import { minutes, temperature } from '../../quantity/quantities.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import {
  makeModel,
  NOTHING_ASKED,
  worthAfter,
  type AskFirstGivens,
  type AskFirstModel,
} from './model.ts';
import { answerWords, printBits } from './print.ts';
import { openAs } from './sim.ts';
import { words } from './task-words.en.ts';

/** Prints as 3 names. */
const THREE = 3.49;
/** Shares of two names that nobody would tell apart. */
const ALIKE = 0.01;
const clean = {
  ...NOTHING_ASKED,
  named: 'none',
  circuit: 'forward',
  day: 'overnight-flat',
} as const;
const unknown = { ...clean, fault: 'hardLip' } as const;
const split = { ...clean, fault: 'transferSeal', warm: true, minutes: true } as const;
const allAsked = Object.fromEntries(
  Object.keys(NOTHING_ASKED).map((question) => [question, true]),
) as typeof NOTHING_ASKED;

const openWith = (state: Partial<AskFirstGivens>): number => {
  const model = makeModel();
  model.apply({ ...unknown, ...state });
  return model.open.value;
};

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const fromC = carOf('transferSeal', 'forward').fromC ?? 0;
  const until = (day: Day) => print(minutesUntil(fromC, day) ?? 0, minutes);
  const both = { ranges: placeOf('ranges', 'both'), warm: placeOf('warm', 'hot') };
  return {
    open: openAs(openWith({ ranges: true, warm: true })),
    minutes: openAs(
      Math.min(openWith({ ranges: true, minutes: true }), openWith({ warm: true, minutes: true })),
    ),
    from: print(fromC, temperature),
    flat: until('overnight-flat'),
    hills: until('overnight-hills'),
    worth: printBits(worthAfter({ ...both, minutes: placeOf('minutes', 'half') }, 'road')),
  };
});
const { reached } = words;

export const tasks: readonly TaskSpec<AskFirstGivens, AskFirstModel>[] = [
  {
    id: 'two-questions',
    ...texts.two,
    start: unknown,
    controls: ['ranges', 'warm', 'minutes'],
    ...judged(({ open, asked }) => {
      if (asked.value.length > 2) return { is: 'too-high', reached: reached.tooMany };
      return {
        is: aim({ value: open.value, most: THREE, near: 2 }),
        reached: reached.open({ open: openAs(open.value) }),
      };
    }),
  },
  {
    id: 'same-car-other-day',
    ...texts.clock,
    start: split,
    controls: ['minutes', 'day'],
    ...judged(({ has, answers }) => {
      const answer = answers.value.minutes;
      const overnight = has.value.day.startsWith('overnight');
      const soon = answer === placeOf('minutes', 'ten');
      const day = reached.day({ answer: answerWords('minutes', answer) });
      if (!overnight) return { is: 'nearly', reached: reached.warmStart };
      return { is: soon ? 'done' : 'too-late', reached: day };
    }),
  },
  {
    id: 'where-talk-ends',
    ...texts.end,
    start: { ...clean, ...allAsked, fault: 'transferSeal' },
    controls: ['fault'],
    done: ({ has, list }) => {
      const { fault } = has.value;
      const share = (name: typeof fault): number => list.value[NAMES.indexOf(name)] ?? 0;
      return fault !== 'healthy' && Math.abs(share(fault) - share('healthy')) < ALIKE;
    },
  },
];
