import type { ShelfModel } from './model.ts';
import { printCount } from './print.ts';
import { words } from './words.en.ts';

/** The last column stands for itself and all beyond it. */
export const LAST = 12;

/** Each column of the picture: how many are used before the order comes, how likely that is, and whether the next car finds one. */
export function columnsOf(model: ShelfModel) {
  const { keep, chanceOf } = model.shelf.value;
  const chances = Array.from({ length: LAST }, (_, used) => chanceOf(used));
  const beyond = Math.max(0, 1 - chances.reduce((sum, one) => sum + one, 0));
  return [...chances, beyond].map((chance, used) => ({
    name: used === LAST ? words.picture.beyond({ last: printCount(used) }) : printCount(used),
    chance,
    found: used < keep,
  }));
}
