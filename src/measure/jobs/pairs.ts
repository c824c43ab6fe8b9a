/**
 * The same test before and after a repair. Two bands of temperature meet here: the planner takes a reading from anywhere in its
 * band (hot: 85 to 105 °C) and allows for it; proof in the trade asks for the same temperature within 3 °C (common practice, no
 * source), because a hot gap loses more with each degree and nothing allows for that on paper.
 */
import {
  aloneOn,
  isNumeric,
  neverStopped,
  offScale,
  OUTCOMES,
  onScale,
  type Hypothesis,
  type TakenReading,
  type Test,
} from '../../diagnosis/index.ts';
import { SAME_C } from '../../diagnosis/before-after.ts';

/** A reading this far from a healthy car's is off [sd]: one in twenty honest ones is. */
const OFF = 2;

/** Whether a reading is what a healthy car of this kind shows. */
export type Standing = 'right' | 'off' | 'unknown';

interface Read {
  readonly id: string;
  readonly taken: TakenReading;
}
export interface Pair {
  readonly before: Read;
  readonly after: Read;
  readonly hot: boolean;
  /** How many degrees apart [°C]; null where one of the two was not written down. */
  readonly apart: number | null;
  readonly same: 'same' | 'apart' | 'unwritten' | 'needless';
  readonly was: Standing;
  readonly is: Standing;
}

/** `sound`: the car with nothing wrong, null while it is not known. */
export function standingOf(reading: TakenReading, sound: Hypothesis | null): Standing {
  const { test, value, temperatureC } = reading;
  if (sound === null) return 'unknown';
  if (!isNumeric(test)) {
    if (test.kind === 'codes') return (value as readonly string[]).length === 0 ? 'right' : 'off';
    return value === OUTCOMES[test.kind][0] ? 'right' : 'off';
  }
  const { mean, variance } = aloneOn(sound, test, temperatureC);
  if (neverStopped(reading)) return 'off';
  return Math.abs(onScale(test, value as number) - mean) <= OFF * Math.sqrt(variance)
    ? 'right'
    : 'off';
}

/** What a healthy car shows in the test of a reading, as it was taken. */
export function healthyOf(
  { test, temperatureC }: TakenReading,
  sound: Hypothesis,
): TakenReading['value'] {
  if (isNumeric(test)) return offScale(test, aloneOn(sound, test, temperatureC).mean);
  return test.kind === 'codes' ? [] : OUTCOMES[test.kind][0];
}

/** What was taken after the repair and is not what a healthy car shows; `later`: the same test read right since. */
export function offAfter(
  after: readonly Read[],
  sound: Hypothesis | null,
): readonly { readonly taken: TakenReading; readonly later: boolean }[] {
  const standing = after.map(({ taken }) => standingOf(taken, sound));
  return after.flatMap(({ taken }, n) =>
    standing[n] === 'off'
      ? [
          {
            taken,
            later: after.some(
              (one, i) => i > n && one.taken.test.id === taken.test.id && standing[i] === 'right',
            ),
          },
        ]
      : [],
  );
}

/** The last reading of each test before, beside every one after. */
export function pairsOf(
  before: readonly Read[],
  after: readonly Read[],
  sound: Hypothesis | null,
): readonly Pair[] {
  const ids = [...new Set(after.map(({ taken }) => taken.test.id))];
  return ids.flatMap((id): readonly Pair[] => {
    const of = (all: readonly Read[]) => all.filter(({ taken }) => taken.test.id === id);
    const one = of(before).at(-1);
    if (one === undefined) return [];
    const { warmth } = one.taken.test.at;
    return of(after).map((other) => {
      const [a, b] = [one.taken.temperatureC, other.taken.temperatureC];
      const apart = a === undefined || b === undefined ? null : Math.abs(a - b);
      return {
        before: one,
        after: other,
        hot: warmth === 'hot',
        apart,
        same:
          warmth === undefined
            ? 'needless'
            : apart === null
              ? 'unwritten'
              : apart <= SAME_C
                ? 'same'
                : 'apart',
        was: standingOf(one.taken, sound),
        is: standingOf(other.taken, sound),
      };
    });
  });
}

/** Tests that were off before, by their last reading. */
export function offBefore(before: readonly Read[], sound: Hypothesis | null): readonly Test[] {
  const last = new Map(before.map(({ taken }) => [taken.test.id, taken]));
  return [...last.values()].flatMap((taken) =>
    standingOf(taken, sound) === 'off' ? [taken.test] : [],
  );
}

/** Tests that were off hot before, and that nobody has taken since. */
export function unrepeated(
  before: readonly Read[],
  after: readonly Read[],
  sound: Hypothesis | null,
): readonly Test[] {
  return offBefore(before, sound).filter(
    ({ id, at }) => at.warmth === 'hot' && !after.some(({ taken }) => taken.test.id === id),
  );
}

/**
 * `unjudged`: there is no healthy car to judge by. `proved`: something that was off hot is right hot, at the same temperature, and nothing measured hot after is off.
 * `partly`: so it is, and something else that was off hot has not been taken again. `stillOff`: something is off. `notSame`: it would be proved, were it the same temperature. `notHot`: no test was
 * taken hot on both sides. `nothingWasOff`: what was taken hot on both sides was right before as well.
 */
export type Proof =
  'none' | 'unjudged' | 'proved' | 'partly' | 'stillOff' | 'notSame' | 'notHot' | 'nothingWasOff';

export function proofOf(
  pairs: readonly Pair[],
  before: readonly Read[],
  after: readonly Read[],
  sound: Hypothesis | null,
): Proof {
  if (after.length === 0) return 'none';
  if (sound === null) return 'unjudged';
  if (offAfter(after, sound).length > 0) return 'stillOff';
  const hot = pairs.filter((pair) => pair.hot);
  if (hot.length === 0) return 'notHot';
  const mended = hot.filter(({ was }) => was === 'off');
  if (mended.length === 0) return 'nothingWasOff';
  if (!mended.some(({ same }) => same === 'same')) return 'notSame';
  return unrepeated(before, after, sound).length === 0 ? 'proved' : 'partly';
}
