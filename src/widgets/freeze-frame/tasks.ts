import { DRIVES_C } from '../../cases/frame-form.ts';
import { jobOf, LINES, sameAs, sharesOf, storedAt, type Line } from '../../cases/frame-list.ts';
import { asGoodAs } from '../../cases/talk-list.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, speed, temperature } from '../../quantity/quantities.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { linesOf, type FreezeFrameGivens, type FreezeFrameModel } from './model.ts';
import { printCount } from './print.ts';
import { words } from './task-words.en.ts';

/** Prints as 3 names. */
const THREE = 3.49;
/** A clutch that has this share of its command has what was asked for. */
const ALL_OF_IT = 0.95;
const [COLD_C, HOT_C] = [20, 100];
const common = { cleared: false, gone: 50, warm: String(HOT_C) } as const;
const CRACKED = { fault: 'transferSeal', gone: 50 } as const;

const coolest = (): number =>
  DRIVES_C.find((tempC) => jobOf(CRACKED.fault, CRACKED.gone, tempC).first !== null) ?? HOT_C;

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const rings = jobOf('sealingRings', common.gone, HOT_C);
  const openWith = (...read: readonly Line[]) =>
    printCount(asGoodAs(sharesOf(sameAs(rings, read))));
  const { cars, silent, names, silentNames } = storedAt(HOT_C, COLD_C);
  const { first } = jobOf('turbineSensor', 0, HOT_C);
  return {
    open: openWith('code', 'other', 'speeds'),
    temp: openWith('code', 'temp'),
    alone: openWith('code'),
    from: print(coolest(), temperature),
    hot: print(HOT_C, temperature),
    cold: print(COLD_C, temperature),
    cars: printCount(cars),
    silent: printCount(silent),
    names: printCount(names),
    silentNames: printCount(silentNames),
    turbine: print(first?.turbine ?? 0, speed),
    output: print(first?.output ?? 0, speed),
  };
});
const { reached } = words;

export const tasks: readonly TaskSpec<FreezeFrameGivens, FreezeFrameModel>[] = [
  {
    id: 'two-lines',
    ...texts.two,
    start: { ...common, ...linesOf('code'), fault: 'sealingRings' },
    controls: ['temp', 'other', 'speeds'],
    ...judged(({ open, read }) => {
      if (read.value.length > 3) return { is: 'too-high', reached: reached.tooMany };
      return {
        is: aim({ value: open.value, most: THREE, near: 2 }),
        reached: reached.open({ open: printCount(open.value) }),
      };
    }),
  },
  {
    id: 'comes-back',
    ...texts.back,
    start: { ...common, ...linesOf('code', 'temp'), ...CRACKED, warm: String(COLD_C) },
    controls: ['warm'],
    ...judged(({ job }) => {
      const { tempC, first } = job.value;
      const at = (system: Parameters<typeof printer>[0]) => ({
        temp: printer(system)(tempC, temperature),
      });
      if (first === null) return { is: 'too-low', reached: (s) => reached.silent(at(s)) };
      return {
        is: tempC > coolest() ? 'too-high' : 'done',
        reached: (s) => reached.cooler(at(s)),
      };
    }),
  },
  {
    id: 'sound-clutch',
    ...texts.sound,
    start: { ...common, ...linesOf(...LINES), fault: 'transferSeal' },
    controls: ['fault'],
    ...judged(({ job }) => {
      const { first } = job.value;
      if (first === null) return { is: 'not-that', reached: reached.noCode };
      return {
        is: first.pressure >= ALL_OF_IT * first.command ? 'done' : 'not-that',
        reached: (system) => {
          const print = printer(system);
          return reached.short({
            pressure: print(first.pressure, pressure),
            command: print(first.command, pressure),
          });
        },
      };
    }),
  },
];
