import { illustrativeSettings } from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { seconds, temperature } from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import type { EngagementGivens, EngagementModel } from './model.ts';

type Task = TaskSpec<EngagementGivens, EngagementModel>;

const sealed: Partial<EngagementGivens> = {
  temp: 100,
  fault: 'transferSeal',
  severity: 75,
  selection: 'electronic',
  range: 'drive',
  failSafe: 'neutral',
  fluid: 'low-viscosity',
  show: 'turbine',
};
const limit = illustrativeSettings.engagementTime;
/** A step of the slider in either unit system, and a little. */
const NEAR = 3;

const edge: Task = {
  id: 'edge',
  words: (system) =>
    `The crack stays. Cool the hot run until the turbine stops in time for the check, ${format(limit, seconds, system)} after selection. Find the hottest fluid at which it still does.`,
  start: sealed,
  controls: ['temp'],
  done: ({ givens, hot, stoppedAt }) => {
    const now = hot.value.solved.stoppedAfter;
    const next = stoppedAt(Math.min(140, givens.temp.value + NEAR));
    return now !== null && now <= limit && (next === null || next > limit);
  },
  hint: 'Go down in big steps until the solid line drops to zero before 2 s on the time axis. Then go back up slowly.',
  after: (system) =>
    `That is this car's fault temperature: ${format(sealed.temp ?? 0, temperature, system)} fails, this passes. Drive it past that point before you judge a repair.`,
};

const cable: Task = {
  id: 'cable',
  words:
    'The car selects Park by itself. Leave the crack and the heat as they are. Change one thing so that the controller still stores the code and cannot select Park.',
  start: sealed,
  controls: ['selection', 'range'],
  done: ({ givens, hot }) =>
    givens.severity.value >= 70 &&
    givens.fault.value === 'transferSeal' &&
    hot.value.codeStored &&
    !hot.value.parked,
  hint: 'Who moves the park pawl? With a cable, a hand does.',
  after:
    'Same seal, same slip, same code. With a cable and lever the pawl is out of the controller’s reach, so the car drops to Neutral and rolls. Two complaints, one fault.',
};

const lateCold: Task = {
  id: 'late-cold',
  words: (system) =>
    `Find a fault that makes the turbine stop late cold as well: more than ${format(1, seconds, system)} after selection at ${format(20, temperature, system)}. Then look at how the hot run differs, or does not.`,
  start: { ...sealed, severity: 50 },
  controls: ['fault', 'severity'],
  done: ({ cold, givens }) => {
    const stopped = cold.value.solved.stoppedAfter;
    return givens.fault.value !== 'transferSeal' && (stopped === null || stopped > 1);
  },
  hint: 'A thin gap hardly leaks cold. What slows the fill at any temperature? Think of the way in, not the way out.',
  after:
    'Late cold and late hot points at the way in, at an open way out, or at plates that take more stroke. Late hot only points at a gap. Time it cold first: it costs two minutes.',
};

const liar: Task = {
  id: 'liar',
  words:
    'Find the fault that stores a code although the turbine really stops. Look at the turbine and at what the sensor says of it.',
  start: { ...sealed, severity: 100, show: 'sensor' },
  controls: ['fault', 'show'],
  done: ({ hot }) =>
    hot.value.codeStored &&
    hot.value.solved.stoppedAfter !== null &&
    hot.value.solved.stoppedAfter < limit,
  hint: 'The controller knows only what its sensors tell it.',
  after:
    'The clutch was fine. The sensor read 300 rpm at a standstill, and the controller did as it was told. Before you open a box for a ratio code, check that the turbine reading falls to zero in gear, at a stop, with the clutch known to hold.',
};

export const tasks: readonly Task[] = [edge, cable, lateCold, liar];
