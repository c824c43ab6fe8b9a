/**
 * Everything that a learner has on a device, as one: what a file for another device or for the foreman carries. Each part is
 * written with the version of its form, so that a file is read by later versions of the site as a store is.
 */
import { steps, type StoredAnswer } from '../answer-steps.ts';
import type { Answer } from '../answer.ts';
import { logColumnsForm, type LogColumns } from '../log-columns.ts';
import { planForm, type Plan } from '../plan.ts';
import { progressForm, type Progress } from '../progress.ts';
import { pastForm, underWayForm, type Past, type UnderWay } from '../rehearsals.ts';
import { settingsForm, type Settings } from '../settings.ts';
import type { Form } from '../versioned.ts';
import { visitsForm, type Visits } from '../visits.ts';
import type { Records } from './records.ts';

/** An answer with what the clock said [ms of Unix time]. */
export interface DatedAnswer {
  readonly at: number;
  readonly answer: Answer;
}

/** What lies in browser storage, by the names of its forms; null: nothing was kept. */
export interface Parts {
  readonly plan: Plan | null;
  readonly progress: Progress | null;
  /** Practice cases. */
  readonly visits: Visits | null;
  readonly columns: LogColumns | null;
  readonly settings: Settings | null;
  /** The rehearsal under way. */
  readonly rehearsal: UnderWay | null;
  /** Rehearsals that were handed in. */
  readonly rehearsed: Past | null;
}

export interface Bundle extends Parts, Records {
  /** Only where the learner typed one. */
  readonly name: string | null;
  /** When the file was written [ms of Unix time]. */
  readonly written: number;
  /** In the order given. */
  readonly answers: readonly DatedAnswer[];
}

export const forms: { readonly [Part in keyof Parts]: Form<NonNullable<Parts[Part]>> } = {
  plan: planForm,
  progress: progressForm,
  visits: visitsForm,
  columns: logColumnsForm,
  settings: settingsForm,
  rehearsal: underWayForm,
  rehearsed: pastForm,
};
export const partNames = Object.keys(forms) as readonly (keyof Parts)[];

/** What a file says it is. */
export const KIND = 'hot-clutch:kept';
/** 1: without meetings of one's own. 2: a vote of theirs says why of the right option alone. */
export const VERSION = 3;
/** Years of daily rounds are 13 million: 50,000 answers at 250 each. */
export const LONGEST_FILE = 25_000_000;
export const LONGEST_NAME = 60;

export function writeBundle(bundle: Bundle): string {
  const parts = partNames.flatMap((part) =>
    bundle[part] === null ? [] : [[part, { v: forms[part].version, data: bundle[part] }] as const],
  );
  return `${JSON.stringify({
    kind: KIND,
    version: VERSION,
    ...(bundle.name !== null && { name: bundle.name }),
    written: bundle.written,
    answers: bundle.answers.map(({ at, answer }): StoredAnswer => ({
      v: steps.length,
      at,
      answer,
    })),
    parts: Object.fromEntries(parts),
    jobs: bundle.jobs,
    sheets: bundle.sheets,
    meetings: bundle.meetings,
  })}\n`;
}

export const nothingKept = (written: number): Bundle => ({
  name: null,
  written,
  answers: [],
  plan: null,
  progress: null,
  visits: null,
  columns: null,
  settings: null,
  rehearsal: null,
  rehearsed: null,
  jobs: [],
  sheets: [],
  meetings: [],
});
