import { computed, effect, signal } from '@preact/signals';
import {
  contradictionFinder,
  outcomesFor,
  stepsOf,
  type TakenReading,
} from '../../diagnosis/index.ts';
import { draftFrom, EMPTY } from '../../planner/form-model.ts';
import { makePlanner } from '../../planner/model.ts';
import { dated, readingsOf, timedId, type JobReading } from '../../storage/jobs/job.ts';
import { format } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { pairsOf } from './pairs.ts';
import type { JobsModel } from './model.ts';
import { takenOf } from './taken.ts';

export type Phase = JobReading['phase'];
/** A reading of the sheet; `taken` is null where this version of the site does not know it. */
export interface SheetReading extends JobReading {
  readonly id: string;
  readonly taken: TakenReading | null;
}
type Known = SheetReading & { readonly taken: TakenReading };
const isKnown = (reading: SheetReading): reading is Known => reading.taken !== null;

/** One job on the page: its readings, what the planner says to them, and the form that keeps every key. */
export function makeSheet(
  jobs: JobsModel,
  id: string,
  now: () => number = Date.now,
  rank?: Parameters<typeof makePlanner>[1],
) {
  const job = computed(() => jobs.job(id));
  const readings = computed((): readonly SheetReading[] => {
    const here = job.value;
    return here ? readingsOf(here).map((one) => ({ ...one, taken: takenOf(one) })) : [];
  });
  const of = (phase: Phase) =>
    computed(() => readings.value.filter((one) => one.phase === phase).filter(isKnown));
  const before = of('before');
  const after = of('after');
  const planner = makePlanner(
    computed(() => before.value.map(({ taken }) => taken)),
    rank,
  );
  /** The transmission that the job is on. */
  const which = computed(() => job.value?.transmission.value ?? 'training');
  const phase = signal<Phase>('before');
  /** The reading that the form changes; empty for a new one. */
  const changing = signal('');

  const kept = job.peek()?.draft.value;
  if (kept) {
    planner.form.draft.value = draftFrom(kept);
    phase.value = kept.phase;
    changing.value = kept.of;
  }
  let first = true;
  const stop = effect(() => {
    const draft = { ...planner.form.draft.value, phase: phase.value, of: changing.value };
    if (first) {
      first = false;
      return;
    }
    const here = job.peek();
    if (here) jobs.change({ ...here, draft: dated(here.draft, now(), draft) });
  });

  const put = (reading: string, value: JobReading | null): void => {
    const here = job.peek();
    if (!here) return;
    const entry = dated(here.readings[reading], now(), value);
    jobs.change({ ...here, readings: { ...here.readings, [reading]: entry } }, 'now');
  };

  /** Made once the planner is there: it remembers the pairs that it has tried. */
  const finder = computed(() => {
    const advice = planner.planner.value === null ? null : planner.advice.peek();
    return advice && contradictionFinder(advice.posterior.cells);
  });
  const clashesAmong = (all: readonly Known[]): readonly (readonly [string, string])[] =>
    (finder.value?.(all.map(({ taken }) => taken)) ?? []).map(
      ({ first: one, second: other }) => [all[one]?.id ?? '', all[other]?.id ?? ''] as const,
    );

  return {
    job,
    readings,
    before,
    after,
    planner,
    which,
    choose: (next: string): void => {
      const here = job.peek();
      if (!here) return;
      jobs.change({ ...here, transmission: dated(here.transmission, now(), next) }, 'now');
    },
    phase,
    changing,
    stop: (): void => {
      stop();
      planner.stopRanking();
    },
    /** Before the first reading, and after each one before the repair. */
    steps: computed(() => {
      const advice = planner.advice.value;
      return advice ? stepsOf(advice.posterior, planner.readings.value) : [];
    }),
    /** Ids of readings, two and two, that cannot both be right. */
    clashes: computed(() => [...clashesAmong(before.value), ...clashesAmong(after.value)]),
    pairs: computed(() =>
      pairsOf(before.value, after.value, planner.advice.value?.posterior.cells ?? []),
    ),
    /** What the best next test would rule out. */
    outcomes: computed(() => {
      const advice = planner.advice.value;
      const [best] = advice?.next ?? [];
      return advice && best ? outcomesFor(advice.posterior, best.test) : [];
    }),
    add: (taken: TakenReading, units: UnitSystem): void => {
      const { text } = planner.form.draft.peek();
      const { test, value, temperatureC } = taken;
      put(changing.peek() === '' ? timedId(now()) : changing.peek(), {
        test: test.id,
        phase: phase.peek(),
        value,
        typed: text.trim(),
        units,
        ...(temperatureC !== undefined && { temperatureC }),
      });
      changing.value = '';
    },
    remove: (reading: SheetReading): void => {
      if (changing.peek() === reading.id) changing.value = '';
      put(reading.id, null);
    },
    /** Back into the form, as it was typed. */
    edit: (
      { id: reading, test, value, typed, phase: when, temperatureC }: SheetReading,
      units: UnitSystem,
    ): void => {
      planner.form.draft.value = draftFrom({
        ...EMPTY,
        test,
        text: typed,
        never: value === null,
        codes: Array.isArray(value) ? (value as string[]) : [],
        outcome: typeof value === 'string' ? value : '',
        temperature: temperatureC === undefined ? '' : format(temperatureC, temperature, units),
      });
      planner.form.trouble.value = null;
      phase.value = when;
      changing.value = reading;
    },
    leaveAsItWas: (): void => {
      changing.value = '';
      planner.form.empty();
    },
  };
}
export type Sheet = ReturnType<typeof makeSheet>;
