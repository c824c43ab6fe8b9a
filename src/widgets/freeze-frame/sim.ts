import { DRIVES_C } from '../../cases/frame-form.ts';
import { LINES, LISTED, storesFirst } from '../../cases/frame-list.ts';
import { format } from '../../quantity/print.ts';
import { percent, temperature } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { linesOf, type FreezeFrameGivens, type FreezeFrameModel } from './model.ts';
import { nameOf, printCount } from './print.ts';
import { words } from './words.en.ts';

const { controls, says } = words;
/** The list without the car that has nothing wrong. */
const FAULTS = LISTED.length - 1;
/** Fewer than this are a few, of fifteen. */
const FEW = 5;

const facts = () => ({ stores: printCount(storesFirst().length), faults: printCount(FAULTS) });
const { options, ...predict } = told(words.predict, facts);

export const sim: SimSpec<FreezeFrameGivens, FreezeFrameModel> = {
  id: 'freeze-frame',
  title: words.title,
  linkVersion: 1,
  controls: [
    {
      kind: 'choice',
      key: 'fault',
      label: controls.fault,
      options: LISTED.map((value) => ({ value, words: nameOf(value) })),
      as: 'select',
    },
    {
      kind: 'choice',
      key: 'warm',
      label: controls.warm,
      options: DRIVES_C.map((tempC) => ({
        value: String(tempC),
        words: (system) => format(tempC, temperature, system),
      })),
      as: 'select',
    },
    {
      kind: 'flag',
      key: 'cleared',
      label: controls.cleared,
      on: controls.yes,
      off: controls.no,
    },
    numberControl('gone', controls.gone, percent, { min: 0, max: 100, step: 25 }),
    ...LINES.map((key) => ({
      kind: 'flag' as const,
      key,
      label: words.lines[key],
      on: controls.read,
      off: controls.unread,
    })),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: { ...linesOf(), fault: 'transferSeal', gone: 50, warm: '100', cleared: false },
    end: { code: true },
    runMs: 400,
    outcome: ({ open }) => {
      const stores = storesFirst().length;
      return {
        option: stores === 1 ? 'one' : stores < FEW ? 'few' : 'most',
        words: words.outcome({ ...facts(), open: printCount(open.value) }),
      };
    },
  },
  says: ({ givens, job, read, list, left, open, openKept }) => {
    const names = printCount(LISTED.length);
    const some = { left: printCount(left.value), names, open: printCount(open.value) };
    if (read.value.length === 0 && !givens.cleared.value) return says.whole({ names });
    if (givens.cleared.value && job.value.first !== null) {
      const kept = printCount(openKept.value);
      return kept === some.open ? says.nothingLost(some) : says.cleared({ open: some.open, kept });
    }
    if (read.value.includes('code') && job.value.first === null) return says.none(some);
    const only = LISTED[list.value.findIndex((share) => share > 0)];
    return left.value === 1 && only !== undefined
      ? says.one({ name: nameOf(only) })
      : says.fits(some);
  },
};
