import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { FILTER, sumsAt, type OpenGivens, type OpenModel } from './model.ts';
import { printCount, printHours } from './print.ts';
import { words } from './task-words.en.ts';

const DEEP = { ...FILTER, extra: 0.5, price: 20, access: 2 };
const PACK = { ...FILTER, extra: 1, price: 180, renewed: 4 };
const VAN = { ...FILTER, price: 50 };

/** Where each begins to pay: what it costs over what is saved for each step of what moves. */
const drop = (state: OpenGivens) => (state.left - state.renewed) / 100;
const accessFrom = sumsAt(DEEP).costs / drop(DEEP);
const leftFrom = PACK.renewed + (100 * sumsAt(PACK).costs) / PACK.access;
const besideFrom = (sumsAt(VAN).costs / drop(VAN) - VAN.access) * VAN.rate;

const texts = {
  deep: told(words.tasks.deep, () => ({
    costs: printHours(sumsAt(DEEP).costs),
    access: printHours(DEEP.access),
    from: printHours(Math.ceil(2 * accessFrom) / 2),
    drop: printCount(100 * drop(DEEP)),
  })),
  pack: told(words.tasks.pack, () => ({
    costs: printHours(sumsAt(PACK).costs),
    access: printHours(PACK.access),
    left: printCount(PACK.left),
    renewed: printCount(PACK.renewed),
    from: printCount(Math.ceil(leftFrom)),
  })),
  beside: told(words.tasks.beside, () => ({
    costs: printHours(sumsAt(VAN).costs),
    worth: printHours(sumsAt(VAN).worth),
    rate: printCount(VAN.rate),
    from: printCount(besideFrom),
    hours: printHours(besideFrom / VAN.rate),
  })),
};

/** Done where it has just begun to pay; how far on is still "just" is the slider's own step or two. */
const justPays = (key: 'access' | 'left' | 'beside', from: number, room: number, near: number) =>
  judged<OpenModel>(({ givens, sums }) => {
    const { costs, worth } = sums.value;
    return {
      is: aim({ value: givens[key].value, least: from - 1e-9, most: from + room, near }),
      reached: words.reached.sum({ costs: printHours(costs), worth: printHours(worth) }),
    };
  });

export const tasks: readonly TaskSpec<OpenGivens, OpenModel>[] = [
  {
    id: 'how-deep',
    ...texts.deep,
    start: DEEP,
    controls: ['access'],
    ...justPays('access', accessFrom, 0.5, 1.5),
  },
  {
    id: 'the-pack',
    ...texts.pack,
    start: PACK,
    controls: ['left'],
    ...justPays('left', leftFrom, 2, 6),
  },
  {
    id: 'beside-the-hours',
    ...texts.beside,
    start: VAN,
    controls: ['beside'],
    ...justPays('beside', besideFrom, 100, 200),
  },
];
