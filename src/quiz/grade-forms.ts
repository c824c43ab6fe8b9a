/** Grading of what was arranged, paired or pointed at. Every line is explained, as every option is. */
import {
  EXTRA,
  START,
  type AskedCase,
  type AskedMatch,
  type AskedOrder,
  type AskedSpot,
} from './asked.ts';
import { minutesOf } from './case-minutes.ts';
import type { Explained, Outcome } from './outcome.ts';
import { longestRising } from './longest-rising.ts';
import { words } from './words.en.ts';

export type Judged = Pick<Outcome, 'right' | 'verdict' | 'explained'>;

/** A page shows what it was sent, so an id it never had is a mistake of ours. */
function known(
  asked: { readonly id: string },
  ids: readonly string[],
  all: readonly string[],
): void {
  const stray = ids.find((id) => !all.includes(id));
  if (stray !== undefined) throw new Error(`Question "${asked.id}" has no "${stray}".`);
}

/** @returns a sentence if nothing was put in order */
export function gradeOrder(asked: AskedOrder, ids: readonly string[]): Judged | string {
  if (ids.length === 0) return words.orderFirst;
  known(
    asked,
    ids,
    asked.steps.map(({ id }) => id),
  );
  const steps = ids.flatMap((id) => asked.steps.find((step) => step.id === id) ?? []);
  if (new Set(ids).size !== asked.steps.length || ids.length !== asked.steps.length)
    throw new Error(`Question "${asked.id}" has ${asked.steps.length} steps, each once.`);
  const stands = new Set(longestRising(steps.map(({ rank }) => rank)));
  const count = String(steps.length);
  const right = stands.size === steps.length;
  const explained = steps
    .map((step, place) => ({ ...step, place, fits: stands.has(place) }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ id, words: text, why, place, fits }): Explained => ({
      id,
      words: text,
      correct: fits,
      taken: true,
      why,
      note: [fits ? words.standsRight : words.standsWrong({ place: String(place + 1) })],
    }));
  return {
    right,
    verdict: right ? words.right : words.inOrder({ stand: String(stands.size), count }),
    explained,
  };
}

/** @returns a sentence if a line has no partner yet */
export function gradeMatch(asked: AskedMatch, ids: readonly string[]): Judged | string {
  const given = new Map(ids.map((id) => id.split(':') as [string, string]));
  const partners = new Map(asked.partners.map(({ id, words }) => [id, words]));
  known(
    asked,
    [...given.keys()],
    asked.pairs.map(({ id }) => id),
  );
  known(asked, [...given.values()], [...partners.keys()]);
  const open = asked.pairs.filter(({ id }) => !given.has(id)).length;
  if (open > 0) return open === 1 ? words.oneOpen : words.someOpen({ open: String(open) });

  const explained = asked.pairs.map(({ id, words: left, why }): Explained => {
    const taken = given.get(id) ?? '';
    const correct = taken === id;
    return {
      id,
      words: [...left, words.goesWith, ...(partners.get(id) ?? [])],
      correct,
      taken: true,
      why,
      note: correct ? [words.pairRight] : [words.youPaired, ...(partners.get(taken) ?? [])],
    };
  });
  const found = explained.filter(({ correct }) => correct).length;
  const count = asked.pairs.length;
  const used = [...given.values()].includes(EXTRA);
  const rest: readonly Explained[] =
    asked.extraWhy === undefined
      ? []
      : [
          {
            id: EXTRA,
            words: partners.get(EXTRA) ?? [],
            correct: !used,
            taken: used,
            why: asked.extraWhy,
            note: [words.goesWithNothing],
          },
        ];
  return {
    right: found === count,
    verdict:
      found === count
        ? words.allRight({ count: String(count) })
        : words.pairsRight({ found: String(found), count: String(count) }),
    explained: [...explained, ...rest],
  };
}

/** @returns a sentence if no step and no place was pointed at */
export function gradeSpot(asked: AskedSpot, ids: readonly string[]): Judged | string {
  const [taken] = ids;
  const gap = asked.missing !== undefined;
  if (taken === undefined) return gap ? words.placeFirst : words.stepFirst;
  const places = [START, ...asked.steps.map(({ id }) => id)];
  known(asked, ids, gap ? places : places.slice(1));
  const right = asked.answers.includes(taken);
  const lines = asked.steps.map((step): Explained => {
    const answer = !gap && asked.answers.includes(step.id);
    return {
      ...step,
      correct: answer,
      taken: !gap && taken === step.id,
      note: [
        answer
          ? right
            ? words.foundStep
            : words.thisStep
          : !gap && taken === step.id
            ? words.pointedAt
            : words.stepIsRight,
      ],
    };
  });
  const { missing } = asked;
  if (missing === undefined)
    return { right, verdict: right ? words.right : words.notThatOne, explained: lines };
  const at = Math.min(...asked.answers.map((id) => places.indexOf(id)));
  const line: Explained = {
    id: 'missing',
    ...missing,
    correct: true,
    taken: right,
    note: [right ? words.foundGap : words.thisGap],
  };
  return {
    right,
    verdict: right
      ? words.right
      : taken === START
        ? words.notAtStart
        : words.notAfter({ place: String(places.indexOf(taken)) }),
    explained: [...lines.slice(0, at), line, ...lines.slice(at)],
  };
}

/** @returns a sentence if no fault was named */
export function gradeCase(asked: AskedCase, ids: readonly string[]): Judged | string {
  const { options, readings, cheapest } = asked;
  known(
    asked,
    ids,
    [...options, ...readings].map(({ id }) => id),
  );
  const named = options.filter(({ id }) => ids.includes(id));
  if (named.length !== 1) return words.nameFirst;
  const right = named.every(({ correct }) => correct);
  const taken = ids.flatMap((id) => readings.find((one) => one.id === id) ?? []);
  const best = cheapest.flatMap((id) => readings.find((one) => one.id === id) ?? []);
  const [minutes, fewest] = [minutesOf(taken, asked.arrives), minutesOf(best, asked.arrives)];
  const spent = { spent: String(minutes), cheapest: String(fewest) };
  const first = right ? words.right : words.notThatOne;
  return {
    right,
    verdict:
      right && minutes < fewest
        ? words.rightUndecided(spent)
        : `${first} ${words.minutesSpent(spent)}`,
    explained: [
      ...options.map((one) => ({ ...one, taken: ids.includes(one.id) })),
      ...readings.map(({ id, words: name, reads, why }): Explained => ({
        id,
        words: [...name, ': ', ...reads],
        correct: false,
        taken: false,
        why,
        note: [
          taken.some((one) => one.id === id) ? words.readIt : words.leftIt,
          ...(cheapest.includes(id) ? [words.oneOfTheCheapest] : []),
        ],
      })),
    ],
  };
}
