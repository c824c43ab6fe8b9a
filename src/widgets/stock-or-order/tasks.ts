import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { SEAL, shelfAt, WANTED, type ShelfGivens, type ShelfModel } from './model.ts';
import { printCount, printIn100, printTenth } from './print.ts';
import { words } from './task-words.en.ts';

const TWICE = { ...SEAL, keep: 3, aYear: 52 };
const NEARER = { ...SEAL, keep: 2 };
const PACK: ShelfGivens = { keep: 3, aYear: 2, days: 14, price: 180 };

/** The longest whole wait that still serves as many as are wanted [d]. */
function longest(state: ShelfGivens): number {
  let days = 0;
  while (shelfAt({ ...state, days: days + 1 }).found >= WANTED) days += 1;
  return days;
}
const nearEnough = longest(NEARER);

const { reached } = words;
const texts = {
  twice: told(words.tasks.twice, () => ({
    keep: printCount(TWICE.keep),
    aYear: printCount(TWICE.aYear),
    before: printCount(shelfAt({}).enough),
    enough: printCount(shelfAt(TWICE).enough),
  })),
  nearer: told(words.tasks.nearer, () => ({
    keep: printCount(NEARER.keep),
    days: printCount(NEARER.days),
    longest: printCount(nearEnough),
    full: printCount(shelfAt(NEARER).enough),
  })),
  pack: told(words.tasks.pack, () => ({
    aYear: printCount(PACK.aYear),
    days: printCount(PACK.days),
    price: printCount(PACK.price),
    keep: printCount(PACK.keep),
    found: printIn100(shelfAt({ ...PACK, keep: 1 }).found),
    money: printCount(shelfAt({ ...PACK, keep: 1 }).money),
    over: printCount(shelfAt(PACK).money - shelfAt({ ...PACK, keep: 1 }).money),
    wait: printTenth(PACK.aYear),
  })),
};

/** Done on the one number that is right: one less or more, and somebody waits or money lies there. */
const exactly = (value: (model: ShelfModel) => number, wanted: (model: ShelfModel) => number) =>
  judged<ShelfModel>((model) => ({
    is: aim({ value: value(model), least: wanted(model), most: wanted(model), near: 1 }),
    reached: reached.found({ found: printIn100(model.shelf.value.found) }),
  }));
const keptRight = exactly(
  ({ shelf }) => shelf.value.keep,
  ({ shelf }) => shelf.value.enough,
);

export const tasks: readonly TaskSpec<ShelfGivens, ShelfModel>[] = [
  { id: 'twice-the-use', ...texts.twice, start: TWICE, controls: ['keep'], ...keptRight },
  {
    id: 'nearer-by',
    ...texts.nearer,
    start: NEARER,
    controls: ['days'],
    ...exactly(
      ({ givens }) => Math.floor(givens.days.value),
      () => nearEnough,
    ),
  },
  { id: 'slow-pack', ...texts.pack, start: PACK, controls: ['keep'], ...keptRight },
];
