/** What waits on this device, by what it keeps and nothing else: home does not load the bank of questions for it. */
import { searchOf } from '../../practice/case-address.ts';
import type { MadeKey } from '../../cases/made-key.ts';
import { dayOf } from '../../quiz/schedule/day.ts';
import { lastDayBefore } from '../../quiz/schedule/exam.ts';
import { readDay } from '../../widgets/retrieval/read-day.ts';
import { dueDay, knownFrom } from '../../quiz/schedule/schedule.ts';
import type { Plan } from '../../storage/plan.ts';
import type { AnswersRead } from '../../storage/read-answers.ts';
import type { UnderWay } from '../../storage/rehearsals.ts';
import { underWay } from '../../storage/round-under-way.ts';
import type { Visits } from '../../storage/visits.ts';
import { answeredFrom, retrievalsOf } from '../../widgets/retrieval/answered.ts';
import { words } from './words.en.ts';

export interface Kept {
  readonly plan: Plan;
  readonly underWay: UnderWay;
  readonly visits: Visits;
  readonly read: AnswersRead;
  readonly now: number;
  readonly minutesWest: (at: number) => number;
  /** Titles of the written cases, by id. */
  readonly titles: Readonly<Record<string, string>>;
}

export interface Line {
  readonly what: string;
  readonly press: string;
  /** Where it leads, if not where its kind always does. */
  readonly href?: string;
}
export const kinds = ['today', 'rehearsal', 'case'] as const;
export type Waiting = Readonly<Record<(typeof kinds)[number], Line | undefined>>;

export const whatWaits = (kept: Kept): Waiting => ({
  today: roundOf(kept),
  rehearsal: rehearsalOf(kept),
  case: caseOf(kept),
});

function roundOf({ plan, read, now, minutesWest }: Kept): Line | undefined {
  const today = dayOf(now, minutesWest(now));
  const retrievals = retrievalsOf(read);
  const begun = underWay(plan.round, retrievals, today);
  if (begun !== undefined) {
    const { done, round } = begun;
    return {
      what: words.begun,
      press: words.goOnAt({ place: done + 1, of: round.items.length }),
    };
  }
  if (retrievals.length === 0) return undefined;
  const exam = plan.exam === null ? undefined : readDay(plan.exam);
  const over = exam !== undefined && today > lastDayBefore(exam);
  const days = over
    ? []
    : [...knownFrom(answeredFrom(retrievals, minutesWest)).values()]
        .map((known) => dueDay(known, exam))
        .filter((day) => day !== undefined);
  const count = days.filter((day) => day <= today).length;
  if (count > 0) {
    return { what: words.due.what({ count }), press: words.due.press({ minutes: plan.minutes }) };
  }
  const press =
    days.length === 0 ? words.toToday : words.nextIn({ days: Math.min(...days) - today });
  return { what: words.later, press };
}

function rehearsalOf({ underWay: { rehearsal } }: Kept): Line | undefined {
  if (rehearsal === null) return undefined;
  const { place, items } = rehearsal;
  return { ...words.rehearsal, press: words.goOnAt({ place: place + 1, of: items.length }) };
}

/** The one that was touched last of those begun and not handed in. */
function caseOf({ visits, titles }: Kept): Line | undefined {
  const begun = Object.entries(visits.byCase)
    .filter(([, { ended, steps }]) => ended === undefined && steps.length > 0)
    .sort(([, a], [, b]) => b.serial - a.serial);
  for (const [name] of begun) {
    const [, on, level, seed] = /^made-(training|second)-([123])-(\d+)$/u.exec(name) ?? [];
    const made = seed !== undefined;
    const title = made ? words.made({ number: seed }) : titles[name];
    // A case that is no longer on the site does not wait.
    if (title === undefined) continue;
    const search = made
      ? searchOf({ kind: 'made', key: { on, level: Number(level), seed: Number(seed) } as MadeKey })
      : searchOf({ kind: 'written', id: name });
    return {
      ...words.case,
      what: words.caseOf({ title }),
      href: `/practise/case/${search}`,
    };
  }
  return undefined;
}
