import { format } from '../../quantity/print.ts';
import { pressure, seconds, temperature } from '../../quantity/quantities.ts';
import { needed } from '../clutch-pressure/needed.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { FEED, makeTwoWays, type WaysGivens, type WaysModel } from './model.ts';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';

type Task = TaskSpec<WaysGivens, WaysModel>;

const standing: Partial<WaysGivens> = {
  range: 'D',
  fault: 'none',
  failSafe: 'neutral',
  car: 'standing',
  feed: 50,
};
/** Wider than one step of the slider. */
const NEAR = 2;

const hand: Task = {
  id: 'hand',
  words:
    'Both controllers saw slip and gave up. The car by wire is in Park. The one by cable stands on a slope with its lever in Drive and its clutch empty. Make it hold.',
  start: { ...standing, fault: 'slip' },
  controls: ['range'],
  done: ({ parked }) => parked.value.mechanical,
  hint: 'What is the only thing in that car that reaches the pawl?',
  after:
    'With a cable, Park is in your hand and nowhere else. Set the brake and chock a wheel before you get out of a car that has just dropped to Neutral.',
};

const shut: Task = {
  id: 'shut',
  words: (system) =>
    `The cable is set wrong. Close the port of the manual valve until the hot clutch can no longer take off at ${format(needed['take-off'].pressure, pressure, system)}. Stop within ${NEAR} % of that point.`,
  start: { ...standing, fault: 'misSet', feed: FEED.max },
  controls: ['feed'],
  done: ({ givens, hot, consequence }) =>
    hot.value.clutch < needed['take-off'].pressure &&
    consequence(Math.min(FEED.max, givens.feed.value + NEAR), HOT_C).clutch >=
      needed['take-off'].pressure,
  hint: 'Read the hot pressure under the drawings. Down to a half hardly anything happens.',
  after: (system) => {
    const model = makeTwoWays();
    model.apply({ ...standing, fault: 'misSet', feed: 33 });
    const { clutch, stopped } = model.cold.value;
    const late =
      stopped === null
        ? ''
        : ` But cold the turbine already takes ${format(stopped, seconds, system)} to stop.`;
    return `At ${format(COLD_C, temperature, system)} the same cable leaves ${format(clutch, pressure, system)}, and a gauge finds nothing.${late} A late engagement cold and weak hot: look at level and cable before you take a box out. It costs nothing.`;
  },
};

const home: Task = {
  id: 'home',
  words:
    'Neither controller has any power. The car by wire is stuck in Park. Find out how the one by cable can still be driven.',
  start: { ...standing, range: 'P', fault: 'noPower' },
  controls: ['range', 'failSafe'],
  done: ({ fed }) => fed.value.mechanical !== undefined && fed.value.electronic === undefined,
  hint: 'The lever still moves the valve. Then it depends on how the box is built.',
  after:
    'A valve body that holds one gear by oil alone gets its car home. One that vents, or one by wire, waits for a truck. Ask which you have before you promise anything on the phone.',
};

const ratchet: Task = {
  id: 'neutral-first',
  words:
    'Find the case in which the controller by wire goes to fail-safe and does not select Park at once.',
  start: standing,
  controls: ['fault', 'car'],
  done: ({ electronicEnd }) => electronicEnd.value === 'failSafeNeutral',
  hint: 'What would a pawl do in a gear that turns?',
  after:
    'It waits. A pawl at speed would only ratchet and break teeth. So the driver loses drive on the road, coasts with brakes and steering, and finds the car in Park when it has slowed. That is one complaint, not two.',
};

export const tasks: readonly Task[] = [hand, shut, home, ratchet];
