/** Numbers of the training clutch and of the book's that the words name, worked out once. */
import { printer } from '../../quantity/print.ts';
import { area, dimension, force, friction } from '../../quantity/part-quantities.ts';
import { count, power, pressure, speed, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { bookNumber, books, howOf, powerOf, torqueOf } from './books.ts';
import { needed, type Required } from '../../simulation/required/control.ts';
import { training } from './model.ts';
import { words } from './words.en.ts';

export const FULL = 400;
export const HALF = 200;
/** Within a hundredth of half counts as half. */
export const DUST = 0.01;
/** The friction at which the training clutch, on 400 kPa, first no longer takes off. */
const WORN = 0.09;
/** How far over the need still counts as "only just" [kPa]: two steps of the slider in psi. */
export const NEAR = 14;

/** What is needed, and at what engine speed, as printed. */
export function needIn(required: Required, system: UnitSystem) {
  const print = printer(system);
  const { torqueNm, engineRpm } = needed[required];
  return { need: print(torqueNm, torque), speed: print(engineRpm, speed) };
}

export const before = torqueOf(training, FULL);
export const khurmi = books['khurmi-10.28'];
export const bookRpm = 500;

export function facts(system: UnitSystem) {
  const print = printer(system);
  const push = (kpa: number): number => kpa * training.area * 0.1;
  const oneFace = torqueOf({ ...training, faces: 1 }, FULL);
  const held = torqueOf(khurmi.build);
  return {
    ...needIn('take-off', system),
    full: print(FULL, pressure),
    half: print(HALF, pressure),
    before: print(before, torque),
    after: print(torqueOf(training, HALF), torque),
    spring: print(training.spring, force),
    fullPush: print(push(FULL), force),
    halfPush: print(push(HALF), force),
    fullLeft: print(push(FULL) - training.spring, force),
    halfLeft: print(push(HALF) - training.spring, force),
    needPressure: print(needed['take-off'].kPa, pressure),
    springPressure: print((training.spring / training.area) * 10, pressure),
    idlePressure: print(needed.idle.kPa, pressure),
    wornFriction: print(WORN, friction),
    wornTorque: print(torqueOf({ ...training, friction: WORN }, FULL), torque),
    eightFaces: print(8 * oneFace, torque),
    book: words.books['khurmi-10.28'].full,
    how: howOf('khurmi-10.28', system),
    bookPower: bookNumber('khurmi-10.28', 'book', system),
    bookSpeed: print(bookRpm, speed),
    bookPressure: print(khurmi.build.pressure, pressure),
    bookFriction: print(khurmi.build.friction, friction),
    bookFaces: print(khurmi.build.faces, count),
    bookArea: print(khurmi.build.area, area),
    bookRadius: print(khurmi.build.radius, dimension),
    modelTorque: print(held, torque),
    modelPower: print(powerOf(held, bookRpm), power),
  };
}
