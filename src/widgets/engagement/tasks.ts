import { illustrativeSettings, trainingStory } from '../../engine/index.ts';
import { COOL_C, HOT_C } from '../../simulation/choices/temperatures.ts';
import { aim, judged } from '../../simulation/judged.ts';
import { printer } from '../../quantity/print.ts';
import { seconds, temperature } from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { CRACKED, type EngagementGivens, type EngagementModel } from './model.ts';
import { stopping } from './story.ts';
import { words } from './task-words.en.ts';

const sealed: Partial<EngagementGivens> = {
  temp: HOT_C,
  fault: 'transferSeal',
  severity: CRACKED,
  selection: 'electronic',
  range: 'drive',
  failSafe: 'neutral',
  fluid: 'low-viscosity',
  show: 'turbine',
};
const limit = illustrativeSettings.engagementTime;
/** A step of the slider in either unit system, and a little. */
const NEAR = 3;
/** Printed as 1.01 s: what is printed as 1.00 s is not more than one second. */
const LATE = 1.005;

const texts = told(words, (s) => {
  const print = printer(s);
  return {
    limit: print(limit, seconds),
    cool: print(COOL_C, temperature),
    late: print(1, seconds),
    release: print(trainingStory.brakeOff, seconds),
  };
});

export const tasks: readonly TaskSpec<EngagementGivens, EngagementModel>[] = [
  {
    id: 'edge',
    ...texts.edge,
    start: sealed,
    controls: ['temp'],
    ...judged(({ givens, hot, stoppedAt }) => {
      const temp = givens.temp.value;
      const now = hot.value.solved.stoppedAfter;
      const onward = (by: number): boolean => stoppedAt(Math.min(140, temp + by)) !== null;
      // Each look further on solves an engagement; none is needed where this one does not stop.
      const stopsHere = () => (!onward(NEAR) ? 'done' : onward(5 * NEAR) ? 'too-low' : 'nearly');
      return {
        // In hard frost the clutch is not full in time either.
        is: now !== null ? stopsHere() : temp < COOL_C ? 'too-low' : 'too-high',
        reached: (s) => stopping(temp, now, s),
      };
    }),
  },
  {
    id: 'cable',
    ...texts.cable,
    start: sealed,
    controls: ['selection', 'range'],
    done: ({ givens, hot }) =>
      givens.severity.value >= CRACKED &&
      givens.fault.value === 'transferSeal' &&
      hot.value.codeStored &&
      !hot.value.parked,
  },
  {
    id: 'late-cold',
    ...texts.lateCold,
    start: { ...sealed, severity: 50 },
    controls: ['fault', 'severity'],
    ...judged(({ cold, givens }) => {
      if (givens.fault.value === 'transferSeal') return null;
      const { stoppedAfter } = cold.value.solved;
      return {
        is: aim({ value: stoppedAfter ?? Infinity, least: LATE, near: 0.15 }),
        reached: (s) => stopping(COOL_C, stoppedAfter, s),
      };
    }),
  },
  {
    id: 'liar',
    ...texts.liar,
    start: { ...sealed, severity: 100, show: 'sensor' },
    controls: ['fault', 'show'],
    done: ({ hot }) => {
      const { stoppedAfter } = hot.value.solved;
      return hot.value.codeStored && stoppedAfter !== null && stoppedAfter < limit;
    },
  },
];
