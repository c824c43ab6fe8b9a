import { computed, effect, signal } from '@preact/signals';
import type { ByName, Contradiction, TakenReading } from '../../diagnosis/index.ts';
import { draftFrom, EMPTY, NO_CODES } from '../../planner/form-model.ts';
import { makePlanner } from '../../planner/model.ts';
import type { Think } from '../../planner/messages.ts';
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
  think?: Think,
) {
  const job = computed(() => jobs.job(id));
  /** As text, which stays the same while something else of the job changes: nothing is weighed again then. */
  const entries = computed(() => JSON.stringify(job.value ? readingsOf(job.value) : []));
  const readings = computed((): readonly SheetReading[] =>
    (JSON.parse(entries.value) as ReturnType<typeof readingsOf>).map((one) => ({
      ...one,
      taken: takenOf(one),
    })),
  );
  const of = (phase: Phase) =>
    computed(() => readings.value.filter((one) => one.phase === phase).filter(isKnown));
  const before = of('before');
  const after = of('after');
  /** Of what the planner was given, which readings of the sheet they are. */
  const idsOf = new WeakMap<readonly TakenReading[], readonly string[]>();
  const given = (all: typeof before) =>
    computed(() => {
      const taken = all.value.map((one) => one.taken);
      idsOf.set(
        taken,
        all.value.map((one) => one.id),
      );
      return taken;
    });
  const made = makePlanner(given(before), think, given(after));
  const planner = {
    ...made,
    form: {
      ...made.form,
      /** A test that was proposed is a reading of its own, not the one that stood in the form to be changed. */
      begin: (test: string): void => {
        changing.value = '';
        made.form.begin(test);
      },
    },
  };
  /** The transmission that the job is on. */
  const which = computed(() => job.value?.transmission.value ?? 'training');
  const phase = signal<Phase>('before');
  /** The reading that the form changes; empty for a new one. */
  const changing = signal('');
  /** The reading that was taken out last, until another one is taken down. */
  const gone = signal<{ readonly id: string; readonly entry: JobReading } | null>(null);

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

  const idsIn = (taken: readonly TakenReading[], all: readonly Contradiction[]) => {
    const ids = idsOf.get(taken) ?? [];
    return all.map(({ first: one, second: other }) => [ids[one] ?? '', ids[other] ?? ''] as const);
  };

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
    gone: computed(
      (): SheetReading | null =>
        gone.value && { ...gone.value.entry, id: gone.value.id, taken: takenOf(gone.value.entry) },
    ),
    stop: (): void => {
      stop();
      planner.stop();
    },
    /** What each reading before the repair did to the list, by its id: the list before it and after. */
    steps: computed((): ReadonlyMap<string, readonly [from: ByName, to: ByName]> => {
      const advice = planner.advice.value;
      const ids = (advice && idsOf.get(advice.of.readings)) ?? [];
      return new Map(
        ids.flatMap((one, place) => {
          const [from, to] = [advice?.steps[place], advice?.steps[place + 1]];
          return from && to ? [[one, [from, to] as const] as const] : [];
        }),
      );
    }),
    /** Ids of readings, two and two, that cannot both be right. */
    clashes: computed((): readonly (readonly [string, string])[] => {
      const found = planner.clashing.value;
      if (found === null) return [];
      return [...idsIn(found.of.readings, found.before), ...idsIn(found.of.after, found.after)];
    }),
    pairs: computed(() => pairsOf(before.value, after.value, planner.grounds.value?.sound ?? null)),
    add: (taken: TakenReading, units: UnitSystem, typed: string): void => {
      const { test, value, temperatureC } = taken;
      put(changing.peek() === '' ? timedId(now()) : changing.peek(), {
        test: test.id,
        phase: phase.peek(),
        value,
        typed,
        units,
        ...(temperatureC !== undefined && { temperatureC }),
      });
      changing.value = '';
      gone.value = null;
    },
    remove: ({ id: reading }: SheetReading): void => {
      if (changing.peek() === reading) changing.value = '';
      const entry = job.peek()?.readings[reading]?.value;
      if (entry) gone.value = { id: reading, entry };
      put(reading, null);
    },
    putBack: (): void => {
      const last = gone.peek();
      if (last) put(last.id, last.entry);
      gone.value = null;
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
        outcome:
          typeof value === 'string'
            ? value
            : Array.isArray(value) && value.length === 0
              ? NO_CODES
              : '',
        temperature: temperatureC === undefined ? '' : format(temperatureC, temperature, units),
      });
      planner.form.trouble.value = null;
      phase.value = when;
      changing.value = reading;
      planner.form.answering.value += 1;
    },
    leaveAsItWas: (): void => {
      changing.value = '';
      planner.form.empty();
    },
  };
}
export type Sheet = ReturnType<typeof makeSheet>;
