import { LEAST, type Job } from '../../cases/bay-list.ts';
import { BAY_CARS } from '../../cases/bay-cars.ts';
import { BAY_KEYS, BAY_TESTS, opens, type BayKey } from '../../cases/bay-tests.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { listOf } from '../../quantity/lists.ts';
import { judged } from '../../simulation/judged.ts';
import type { TaskSpec, Verdict } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import {
  makeModel,
  orderOf,
  type Step,
  type TestOrderGivens,
  type TestOrderModel,
} from './model.ts';
import { openAs, printMinutes, printShare, printWorth } from './print.ts';
import { DONE } from './sim.ts';
import { words } from './task-words.en.ts';

const { reached } = words;
/** All of the first task, with what was spent before it [min]. */
const MOST = 65;
/** A list as open as this is nearly one name. */
const NEARLY = 2;

const cold: readonly BayKey[] = [...DONE, 'cold'];
const bothHot: readonly BayKey[] = [...cold, 'hotReverse', 'hotDrive'];
const outside: readonly BayKey[] = BAY_KEYS.filter(
  (key) => !BAY_TESTS.some((one) => one.key === key && opens(one)),
);

function modelWith(car: string, taken: readonly BayKey[]): TestOrderModel {
  const model = makeModel();
  model.apply({ ...orderOf(...taken), car });
  return model;
}

/** What was taken after these. */
const addedTo = ({ way }: TestOrderModel, before: readonly BayKey[]): readonly Step[] =>
  way.value.filter(({ took: { one } }) => !before.includes(one.key));

/** Why a car with all done from outside is not opened; null where it is. */
function shut({ list, sure }: Pick<TestOrderModel, 'list' | 'sure'>): string | null {
  const top = NAMES[list.value.indexOf(Math.max(...list.value))];
  if (top === 'unlisted') return reached.outside;
  if (sure.value) return reached.sure;
  return top === 'healthy' || top === 'thinFluid' ? reached.sound : null;
}

const minutesIn = (job: Job): string => printMinutes(job.minutes);
const texts = told(words.tasks, () => {
  const short = modelWith('1', [...cold, 'hotReverse', 'line']);
  const straight = modelWith('1', [...cold, 'seal']);
  const done = modelWith('1', [...bothHot, 'current', 'air']);
  const minutesOf = (key: BayKey): number =>
    done.way.value.find(({ took }) => took.one.key === key)?.took.minutes ?? 0;
  const cars = BAY_CARS.map((_car, i) => String(i + 1));
  const pan = modelWith('3', [...outside, 'pan']).way.value.at(-1)?.took;
  return {
    most: printMinutes(MOST),
    minutes: minutesIn(short.job.value),
    seal: minutesIn(straight.job.value),
    share: printShare(Math.max(...straight.list.value)),
    current: printMinutes(minutesOf('current')),
    air: printMinutes(minutesOf('air')),
    cars: listOf(cars.filter((car) => shut(modelWith(car, outside)) === null)),
    pan: printMinutes(pan?.minutes ?? 0),
    worth: printWorth(pan?.worth ?? 0),
  };
});

function opened(model: TestOrderModel): Verdict | null {
  const before = modelWith(model.givens.car.value, outside);
  const why = shut(before);
  const added = addedTo(model, outside);
  const [only] = added;
  if (only === undefined) return null;
  if (why !== null) return { is: 'not-that', reached: why };
  if (added.length > 1) return { is: 'too-high', reached: reached.one };
  const isBest = before.best.value?.one === only.took.one;
  return { is: isBest ? 'done' : 'nearly', reached: reached.better };
}

export const tasks: readonly TaskSpec<TestOrderGivens, TestOrderModel>[] = [
  {
    id: 'one-name-in-time',
    ...texts.name,
    start: { ...orderOf(...cold), car: '1' },
    controls: ['hotReverse', 'line', 'seal'],
    ...judged((model) => {
      const { job, open, sure, taken } = model;
      if (addedTo(model, cold).length === 0) return null;
      if (taken.value.some(opens)) return { is: 'not-that', reached: reached.opened };
      const spent = minutesIn(job.value);
      if (job.value.minutes > MOST)
        return { is: 'too-high', reached: reached.late({ minutes: spent }) };
      const as = reached.open({ minutes: spent, open: openAs(open.value) });
      if (sure.value) return { is: 'done', reached: as };
      return { is: open.value < NEARLY ? 'nearly' : 'not-that', reached: as };
    }),
  },
  {
    id: 'tells-nothing',
    ...texts.nothing,
    start: { ...orderOf(...bothHot), car: '1' },
    controls: ['line', 'current', 'air', 'seal'],
    ...judged((model) => {
      const added = addedTo(model, bothHot);
      const [only] = added;
      if (only === undefined) return null;
      if (added.length > 1) return { is: 'too-high', reached: reached.one };
      const { worth } = only.took;
      return {
        is: worth < LEAST ? 'done' : 'not-that',
        reached: reached.worth({ worth: printWorth(worth) }),
      };
    }),
  },
  {
    id: 'opening-is-right',
    ...texts.open,
    start: { ...orderOf(...outside), car: '1' },
    controls: ['car', 'pan', 'air', 'bore', 'seal'],
    ...judged(opened),
  },
];
