import { format } from '../../quantity/print.ts';
import { length, seconds, speed } from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { makeControllerSees, START, type SeesGivens, type SeesModel } from './model.ts';

type Task = TaskSpec<SeesGivens, SeesModel>;

/** The model at a state, for the numbers in the words. */
const at = (state: Partial<SeesGivens>): SeesModel => {
  const model = makeControllerSees();
  model.apply({ ...START, ...state });
  return model;
};
const codes = (model: SeesModel): boolean =>
  model.of('crack25').codeAfter !== null && model.of('crack30').codeAfter !== null;

const both: Task = {
  id: 'both-cracks',
  words: (system) =>
    `These limits are slack: the crack of ${format(0.25, length, system)} never stores its code. Set slip limit and time so that both big cracks store a code and every healthy recording passes.`,
  start: { ...START, slipLimit: 600, slipTime: 1.5 },
  controls: ['slipLimit', 'slipTime', 'recording'],
  done: (model) => codes(model) && model.falseAlarms.value.length === 0,
  hint: 'A code takes two failed checks, one after the other. Shorten the time first, and look at the driver in a hurry before you go too far.',
  after: (system) => {
    const { longestOver } = at({}).healthyWorst.value;
    return `There is room between the two. A healthy clutch slips ${format(longestOver, seconds, system)} at the longest, while it fills with the throttle already open. The time has to be longer than that. The rest is choice, and makers choose differently.`;
  },
};

const friction: Task = {
  id: 'friction',
  words:
    'Worn friction is missed: its turbine stops late, but it stops. Look earlier. Catch it with the engagement check and let every healthy recording pass.',
  start: { ...START, recording: 'friction' },
  controls: ['engagementTime', 'recording'],
  done: (model) => model.of('friction').verdict === 'caught' && model.falseAlarms.value.length === 0,
  hint: 'Read in the picture when the slip of the worn clutch drops. Then switch to the healthy one in the frost and read it there.',
  after: (system) =>
    `The slowest healthy turbine stands ${format(at({}).healthyWorst.value.slowest, seconds, system)} after selection; the worn one takes longer. The check must look between the two. A log gives you the same two numbers: note the stopping time of a car you know is good.`,
};

const price: Task = {
  id: 'price',
  words: (system) =>
    `The thin crack, ${format(0.16, length, system)}, is still missed. Look earlier yet, until it is caught. Then see what else trips.`,
  start: { ...START, engagementTime: 1.25, recording: 'crack16' },
  controls: ['engagementTime', 'recording'],
  done: (model) => model.of('crack16').verdict === 'caught' && model.falseAlarms.value.length > 0,
  hint: 'Go down in small steps and watch the table under the picture.',
  after:
    'You cannot have both. The thin crack is quicker than a healthy clutch on a frosty morning, so no limit parts them. A controller that never cries wolf lets small leaks drive on. That is why no code does not mean no fault.',
};

const noise: Task = {
  id: 'noise',
  words:
    'Usual limits, a healthy hot car. Worsen the noise of the turbine sensor until this car trips. Which check is fooled?',
  start: { ...START, recording: 'hot' },
  controls: ['noise'],
  done: (model) => model.of('hot').verdict === 'false alarm',
  hint: 'Noise below a limit cannot cross it.',
  after: (system) =>
    `The engagement check takes one look, and one bad reading over ${format(START.engagementLimit, speed, system)} is enough. The ratio check wants thirty readings in a row over its limit, so noise alone hardly gets through. Sensor, ring and wiring come before the clutch when a log looks like this.`,
};

export const tasks: readonly Task[] = [both, friction, price, noise];
