import { force } from '../../quantity/part-quantities.ts';
import { format, printer } from '../../quantity/print.ts';
import { percent, pressure, torque } from '../../quantity/quantities.ts';
import type { PredictSpec } from '../../simulation/sim-spec.ts';
import { torqueOf } from './books.ts';
import { training, type HoldingGivens, type HoldingModel } from './model.ts';

const FULL = 400;
const HALF = 200;
const start: Partial<HoldingGivens> = {
  example: 'training',
  pressure: FULL,
  required: 'take-off',
};
const before = torqueOf(training, FULL);
const after = torqueOf(training, HALF);
const squeeze = (kpa: number): number => kpa * training.area * 0.1 - training.spring;
/** Within a hundredth of half counts as half. */
const DUST = 0.01;

export const predict: PredictSpec<HoldingGivens, HoldingModel> = {
  question: (system) => {
    const print = printer(system);
    return `The training clutch has ${print(FULL, pressure)} behind its piston and can carry ${print(before, torque)}. The gauge drops to half, ${print(HALF, pressure)}. The torque it can carry:`;
  },
  options: [
    {
      id: 'half',
      words: 'Drops to half as well.',
      why: (system) => {
        const print = printer(system);
        return `So it would with no return spring. The oil’s push does halve, from ${print(FULL * training.area * 0.1, force)} to ${print(HALF * training.area * 0.1, force)}. But the spring takes the same ${print(training.spring, force)} both times, and it takes it first.`;
      },
    },
    {
      id: 'less',
      words: 'Drops to less than half.',
      why: (system) => {
        const print = printer(system);
        return `The spring takes its ${print(training.spring, force)} first, whatever the pressure. Out of ${print(FULL * training.area * 0.1, force)} that leaves ${print(squeeze(FULL), force)} for the plates. Out of ${print(HALF * training.area * 0.1, force)} it leaves ${print(squeeze(HALF), force)}. Torque follows what is left, so ${print(before, torque)} becomes ${print(after, torque)}.`;
      },
    },
    {
      id: 'more',
      words: 'Drops, but keeps more than half.',
      why: (system) => {
        const print = printer(system);
        return `It would if the spring helped the oil. It works against it: it is there to let the clutch go. At ${print(HALF, pressure)} it takes ${print(training.spring, force)} of ${print(HALF * training.area * 0.1, force)}, over half.`;
      },
    },
  ],
  start,
  end: { pressure: HALF },
  runLabel: 'Halve the pressure',
  outcome: ({ torque: has }) => {
    const share = has.value / before;
    const option = Math.abs(share - 0.5) < DUST ? 'half' : share < 0.5 ? 'less' : 'more';
    return {
      option,
      words: (system) =>
        `From ${format(before, torque, system)} to ${format(has.value, torque, system)}: ${format(100 * share, percent, system)} of it is left, at half the pressure.`,
    };
  },
};
