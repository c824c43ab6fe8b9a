import { computed } from '@preact/signals';
import { jobOf, LINES, lineWorth, sameAs, sharesOf, type Line } from '../../cases/frame-list.ts';
import { asGoodAs } from '../../cases/talk-list.ts';
import type { Name } from '../../diagnosis/hypotheses.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

/** Whether each line has been read. */
type Lines = Record<Line, boolean>;
export type FreezeFrameGivens = Lines & {
  /** What the car has. */
  fault: Name;
  /** How far gone it is, between its mildest car and its worst [%]. */
  gone: number;
  /** Temperature of the drive [°C], as the text of a choice. */
  warm: string;
  /** Whether somebody has cleared the code, after it was written on the job sheet. */
  cleared: boolean;
};

export const linesOf = (...read: readonly Line[]): Lines =>
  Object.fromEntries(LINES.map((line) => [line, read.includes(line)])) as Lines;
/** What is left of a code that was cleared: its name, on the job sheet. */
export const ON_THE_SHEET: readonly Line[] = ['code'];

const START: FreezeFrameGivens = {
  ...linesOf('code'),
  fault: 'transferSeal',
  gone: 50,
  warm: '100',
  cleared: false,
};

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const job = computed(() =>
    jobOf(givens.fault.value, givens.gone.value, Number(givens.warm.value)),
  );
  const pressed = computed(() => LINES.filter((line) => givens[line].value));
  const read = computed(() =>
    givens.cleared.value
      ? pressed.value.filter((line) => ON_THE_SHEET.includes(line))
      : pressed.value,
  );
  const list = computed(() => sharesOf(sameAs(job.value, read.value)));
  const fits = (shares: readonly number[]): number => shares.filter((share) => share > 0).length;
  return {
    givens,
    apply,
    reset,
    /** The drive that the code, its frame and the list are about. */
    job,
    /** Lines that can be read: the button was pressed, and nobody has erased it. */
    read,
    /** Share of each name, in the order of LISTED. */
    list,
    /** How many names can store the same, and how long an even list would be that is as open. */
    left: computed(() => fits(list.value)),
    open: computed(() => asGoodAs(list.value)),
    /** How open it was before the code was cleared. */
    openKept: computed(() => asGoodAs(sharesOf(sameAs(job.value, pressed.value)))),
    /** What a line is worth now [bits]; of one that was read, what it was worth without itself. */
    worth: (line: Line): number =>
      lineWorth(
        job.value,
        read.value.filter((one) => one !== line),
        line,
      ),
  } satisfies SimModel<FreezeFrameGivens> & Record<string, unknown>;
}
export type FreezeFrameModel = ReturnType<typeof makeModel>;
