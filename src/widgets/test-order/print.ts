/** This simulation's own words for its numbers. */
import { canSay, type Job } from '../../cases/bay-list.ts';
import { reachOf, type BAY_TESTS } from '../../cases/bay-tests.ts';
import { words as names } from '../../car/words.en.ts';
import { minutesFor } from '../../diagnosis/car-state.ts';
import { isFault, type Name } from '../../diagnosis/hypotheses.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { count, minutes, percent, times } from '../../quantity/quantities.ts';
import type { TestOrderModel } from './model.ts';
import { words } from './words.en.ts';

type One = (typeof BAY_TESTS)[number];

export const nameOf = (name: Name): string =>
  isFault(name) ? names.faults[name] : words.names[name];

export const printWorth = (bits: number): string => formatNumber(bits, times, 'si');
/** Halvings in ten minutes. */
export const printRate = (p: { readonly worth: number; readonly minutes: number }): string =>
  printWorth((10 * p.worth) / p.minutes);
export const printMinutes = (value: number): string => format(value, minutes, 'si');
export const printShare = (share: number): string => format(100 * share, percent, 'si');
/** A chance under this is told as that [share]. */
const SMALL = 0.01;
const printChance = (chance: number): string =>
  chance < SMALL ? words.under({ least: printShare(SMALL) }) : printShare(chance);
/** As a list of so many names: what the reader is told, and what tasks are judged by. */
export const openAs = (open: number): string => format(open, count, 'si');

export const saidWords = ({ key }: One, said: number): string => words.readings[key][said] ?? '';

export const canSayWords = ({ shares }: Job, one: One): string =>
  canSay(shares, one)
    .map((chance, said) => words.can({ said: saidWords(one, said), chance: printChance(chance) }))
    .join(', ');

/** Before a test is taken: what it takes, and whatever it can say; after it, what it said. */
export function underTest({ way, job, saidBy }: TestOrderModel, one: One): string {
  const step = way.value.find(({ took }) => took.one === one);
  if (step !== undefined) {
    const { worth, minutes: took } = step.took;
    return words.after({
      said: saidWords(one, saidBy(one)),
      worth: printWorth(worth),
      minutes: printMinutes(took),
    });
  }
  return words.before({
    minutes: printMinutes(minutesFor(one.test, job.value.state)),
    reach: words.reaches[reachOf(one)],
    can: canSayWords(job.value, one),
  });
}
