import { textFor } from '../../quantity/unit-system.ts';
import { printer } from '../../quantity/print.ts';
import { area, dimension, friction } from '../../quantity/part-quantities.ts';
import { power, pressure, speed, torque } from '../../quantity/quantities.ts';
import { needed } from '../clutch-pressure/needed.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { books, powerOf, torqueOf } from './books.ts';
import { training, type HoldingGivens, type HoldingModel } from './model.ts';
import { FRICTION } from './ranges.ts';

type Task = TaskSpec<HoldingGivens, HoldingModel>;

const trainingAt: Partial<HoldingGivens> = { example: 'training', required: 'take-off' };
const take = needed['take-off'];

/** How far over the need still counts as "only just" [kPa]: two steps of the slider in psi. */
const NEAR = 14;
const onlyJust: Task = {
  id: 'only-just',
  words: (system) =>
    `Taking off asks the clutch for ${printer(system)(take.torque, torque)}. Find the lowest pressure at which it still holds.`,
  start: { ...trainingAt, pressure: 200 },
  controls: ['pressure'],
  done: ({ holds, givens, needPressure }) =>
    holds.value && givens.pressure.value - needPressure.value <= NEAR,
  hint: 'Raise the pressure until the line comes up through the band and the word turns to “holds”.',
  after: (system) => {
    const print = printer(system);
    return `It needs ${print(take.pressure, pressure)}. The first ${print((training.spring / training.area) * 10, pressure)} of it go to the spring. Standing in gear at idle needs ${print(needed.idle.pressure, pressure)}: a car can stand in gear with less than half of what it needs to drive off.`;
  },
};

const worn: Task = {
  id: 'worn-plates',
  words: (system) =>
    `Now wear the plates. The gauge stays at ${printer(system)(400, pressure)}. Lower the friction, step by step, until the car can no longer take off, and stop there.`,
  start: { ...trainingAt, pressure: 400 },
  controls: ['friction'],
  done: ({ holds, holdsWith, givens }) =>
    !holds.value &&
    holdsWith({ friction: Math.min(FRICTION.max, givens.friction.value + FRICTION.step * 1.01) }),
  hint: 'One step at a time near the edge. If you went too far, come back up by one.',
  after: (system) => {
    const print = printer(system);
    const left = torqueOf({ ...training, friction: 0.09 }, 400);
    return `At friction ${print(0.09, friction)} it carries ${print(left, torque)} of the ${print(take.torque, torque)} it needs, and the gauge has not moved. Good pressure that does not hold: look at the plates.`;
  },
};

const plates: Task = {
  id: 'plates-short',
  words: (system) =>
    `Somebody built this pack with four friction faces. The controller gives ${printer(system)(400, pressure)} and no more. What is the smallest number of faces that can take off?`,
  start: { ...trainingAt, pressure: 400, faces: 4 },
  controls: ['faces'],
  done: ({ holds, holdsWith, givens }) =>
    holds.value && !holdsWith({ faces: givens.faces.value - 1 }),
  hint: 'Add faces one by one. Torque grows by the same amount with each.',
  after: (system) => {
    const print = printer(system);
    const one = torqueOf({ ...training, faces: 1 }, 400);
    return `Each face carries ${print(one, torque)} at ${print(400, pressure)}, so eight will do: ${print(8 * one, torque)} against ${print(take.torque, torque)}. The training clutch has ten. A plate left out costs two faces, and no gauge shows it. Count them as you build.`;
  },
};

const khurmi = books['khurmi-10.28'];
const book: Task = {
  id: 'by-the-book',
  words: (system) => {
    const print = printer(system);
    const { build } = khurmi;
    return `For doubters, and free to skip: check the model against a book. ${khurmi.full}: ${textFor(khurmi.how, system)} The book finds ${print(18.8, power)} at ${print(500, speed)}. Pick it from the list, or set it by hand (${print(build.pressure, pressure)}, friction ${print(build.friction, friction)}, ${build.faces} faces, ${print(build.area, area)}, ${print(build.radius, dimension)}, no spring).`;
  },
  start: { ...trainingAt, pressure: 400 },
  controls: ['example', 'pressure', 'friction', 'faces', 'area', 'radius', 'spring'],
  done: ({ build, torque: has }) => {
    const now = build.value;
    const { pressure: kpa, faces, spring } = khurmi.build;
    // Sizes set by hand are rounded as printed: half a psi alone is 3.4 kPa, and two per cent of the power.
    return (
      Math.abs(now.pressure - kpa) < 3.5 &&
      now.faces === faces &&
      now.spring === spring &&
      Math.abs(powerOf(has.value, 500) - 18.8) < 0.6
    );
  },
  hint: 'The list is called “Which clutch”. By hand: watch the spring, the book has none.',
  after: (system) => {
    const print = printer(system);
    const held = torqueOf(khurmi.build);
    return `The model holds ${print(held, torque)}, which at ${print(500, speed)} carries ${print(powerOf(held, 500), power)}: the book’s number. Pressure, area, friction, faces and radius do it for any disc clutch; ours adds the spring. (The book lets pressure fall toward the outer edge, so its ring counts as ${print(khurmi.build.area, area)} under full pressure.)`;
  },
};

export const tasks: readonly Task[] = [onlyJust, worn, plates, book];
