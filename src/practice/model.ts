/** The state of one case in the hand of a learner. */
import { computed, signal } from '@preact/signals';
import { asksCircuit, judge, type Cause, type Conclusion, type Named } from '../cases/judge.ts';
import { LOOKS, QUESTIONS, REPAIRS, type Repair } from '../cases/lists.ts';
import { readingsOf, standingAfter, type Step } from '../cases/visit.ts';
import { TESTS } from '../diagnosis/index.ts';
import { CIRCUITS, type Circuit } from '../engine/index.ts';
import { visitKeeper, withVisit, type Visit } from '../storage/visits.ts';
import type { BenchCase } from './bench-case.ts';
import { words } from './words.en.ts';

const KINDS: Readonly<Record<Step['kind'], readonly string[]>> = {
  ask: QUESTIONS,
  look: LOOKS,
  test: TESTS.map(({ id }) => id),
};
const written = ({ kind, what }: Step): string => `${kind}:${what}`;
/** A step that this version does not know is left out. */
function readStep(text: string): readonly Step[] {
  const cut = text.indexOf(':');
  const [kind, what] = [text.slice(0, cut), text.slice(cut + 1)];
  return Object.hasOwn(KINDS, kind) && KINDS[kind as Step['kind']].includes(what)
    ? [{ kind, what } as Step]
    : [];
}
const writtenCause = ({ cause, circuit }: Named): string =>
  circuit === undefined ? cause : `${cause}@${circuit}`;
function readCause(text: string): readonly Named[] {
  const [cause = '', circuit] = text.split('@');
  if (!Object.hasOwn(words.causes, cause)) return [];
  const at = CIRCUITS.find((one) => one === circuit);
  return [{ cause: cause as Cause, ...(at !== undefined && { circuit: at }) }];
}
const isRepair = (text: string): text is Repair => (REPAIRS as readonly string[]).includes(text);

/** Ids of the fields of the answer. */
export const causeField = (place: number): string => `case-cause-${place}`;
export const circuitField = (place: number): string => `${causeField(place)}-circuit`;
export const REPAIR_FIELD = 'case-repairs';

/** What is wrong with the answer, and at which field. */
export interface Wanting {
  readonly what: 'noCause' | 'noCircuit' | 'twice' | 'noRepair';
  readonly field: string;
}

/** A cause as the form has it: perhaps without its clutch yet. */
export interface Draft {
  readonly cause: Cause | '';
  readonly circuit: Circuit | '';
}
const NOTHING: Draft = { cause: '', circuit: '' };

export function makeModel(bench: BenchCase) {
  const keeper = visitKeeper();
  const before: Visit | undefined = keeper.read().data.byCase[bench.key];
  const steps = signal<readonly Step[]>((before?.steps ?? []).flatMap(readStep));
  const kept = (before?.causes ?? []).flatMap(readCause);
  const draftOf = (named: Named | undefined): Draft =>
    named === undefined ? NOTHING : { cause: named.cause, circuit: named.circuit ?? '' };
  const drafts = [signal(draftOf(kept[0])), signal(draftOf(kept[1]))] as const;
  const repairs = signal<readonly Repair[]>((before?.repairs ?? []).filter(isRepair));
  const ended = signal(before?.ended !== undefined);
  let fresh = false;
  /** Said where the browser keeps nothing. */
  const unkept = signal(false);
  const standing = computed(() => standingAfter(steps.value, bench.coldMorning));
  const causes = computed(() =>
    drafts.flatMap(({ value: { cause, circuit } }): readonly Named[] =>
      cause === '' ? [] : [{ cause, ...(asksCircuit(cause) && circuit !== '' && { circuit }) }],
    ),
  );
  const conclusion = computed((): Conclusion => ({
    causes: causes.value,
    repairs: repairs.value,
  }));

  const keep = () => {
    const status = keeper.update((current) =>
      withVisit(current, bench.key, {
        steps: steps.value.map(written),
        causes: causes.value.map(writtenCause),
        repairs: repairs.value,
        ...(ended.value && {
          ended: {
            verdict: judge(bench.causes, conclusion.value).verdict,
            minutes: Math.round(standing.value.minutes),
          },
        }),
      }),
    );
    unkept.value = status !== 'ok';
  };
  const has = (step: Step): boolean => steps.value.some((one) => written(one) === written(step));
  /** What is wrong with the form and at which of its fields, or nothing. */
  const wanting = (): Wanting | null => {
    const [first, second] = [drafts[0].value, drafts[1].value];
    if (first.cause === '') return { what: 'noCause', field: causeField(0) };
    const bare = drafts.findIndex(
      ({ value: { cause, circuit } }) => cause !== '' && asksCircuit(cause) && circuit === '',
    );
    if (bare >= 0) return { what: 'noCircuit', field: circuitField(bare) };
    if (first.cause === second.cause && first.circuit === second.circuit)
      return { what: 'twice', field: causeField(1) };
    return repairs.value.length === 0 ? { what: 'noRepair', field: REPAIR_FIELD } : null;
  };
  return {
    bench,
    steps,
    standing,
    drafts,
    repairs,
    conclusion,
    ended,
    unkept,
    wanting,
    readings: computed(() => readingsOf(steps.value, bench.read)),
    has,
    take: (step: Step): void => {
      if (ended.value || has(step)) return;
      steps.value = [...steps.value, step];
      keep();
    },
    choose: (place: 0 | 1, draft: Draft): void => {
      drafts[place].value = draft;
      keep();
    },
    plan: (repair: Repair, on: boolean): void => {
      const others = repairs.value.filter((one) => one !== repair);
      repairs.value = on ? [...others, repair] : others;
      keep();
    },
    again: (): void => {
      steps.value = [];
      for (const draft of drafts) draft.value = NOTHING;
      repairs.value = [];
      ended.value = false;
      keep();
    },
    /** Whether it was handed in on this visit, so that the page goes to how it went. */
    justEnded: (): boolean => fresh,
    handIn: (): void => {
      fresh = true;
      ended.value = true;
      keep();
    },
  };
}
export type CaseModel = ReturnType<typeof makeModel>;
