import type { MadeCase } from '../cases/made.ts';
import type { Manner } from '../cases/noticed.ts';
import { chanceFrom } from '../diagnosis/index.ts';
import type { Question } from '../cases/lists.ts';
import { words } from './customer-words.en.ts';

type Range = 'drive' | 'reverse';
const same = (a: Readonly<Record<'cold' | 'hot', Manner>>, b: typeof a): boolean =>
  a.cold === b.cold && a.hot === b.hot;

/** What the customer of a made case says, and answers: all of it follows from what the car does. */
export function customerOf({ key, noticed, classes }: MadeCase): {
  readonly complaint: string;
  readonly asked: Readonly<Record<Question, string>>;
} {
  const { drive, reverse, flares, high, light } = noticed;
  const of = (who: Range | 'both', { cold, hot }: typeof drive) => words.range[cold][hot][who];
  const isGood = ({ cold, hot }: typeof drive): boolean => cold === 'good' && hot === 'good';
  const told = [
    ...(same(drive, reverse)
      ? [isGood(drive) ? '' : of('both', drive)]
      : [of('drive', drive), of('reverse', reverse)]),
    ...(flares.drive && drive.hot !== 'never' ? [words.flares.drive] : []),
    ...(flares.reverse && reverse.hot !== 'never' ? [words.flares.reverse] : []),
    ...(high ? [words.high] : []),
    ...(light ? [words.light] : []),
  ].filter((sentence) => sentence !== '');
  const chance = chanceFrom(key.seed + 17);
  const pick = (list: readonly string[]): string => list[Math.floor(chance() * list.length)] ?? '';
  const cold = drive.cold !== 'good' || reverse.cold !== 'good';
  const hot = drive.hot !== 'good' || reverse.hot !== 'good' || flares.drive || flares.reverse;
  const rebuilt = classes.some(([{ name }]) => name === 'openPort');
  return {
    complaint:
      told.length === 0
        ? pick(words.vague)
        : told.length === 1 && light
          ? words.lightOnly
          : told.join(' '),
    asked: {
      ranges: words.ranges[isGood(drive) ? 'spared' : 'hit'][isGood(reverse) ? 'spared' : 'hit'],
      minutes:
        cold && hot
          ? words.when.both
          : cold
            ? words.when.cold
            : hot
              ? words.when.hot
              : words.when.never,
      stood: words.stood,
      weather: cold && hot ? words.weather.both : cold ? words.weather.cold : words.weather.hot,
      load: flares.drive || flares.reverse ? words.load.more : words.load.none,
      restart: words.restart,
      onset: rebuilt ? words.onset.sudden : pick(words.onset.slow),
      lastWork: rebuilt ? words.lastWork.rebuilt : pick(words.lastWork.any),
      lights: light ? words.lights.yes : words.lights.no,
    },
  };
}
