import { format, printer } from '../../quantity/print.ts';
import { workedTorque } from '../../quantity/part-quantities.ts';
import { power, pressure, speed, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { needed, type Required } from '../clutch-pressure/needed.ts';
import { books, ours, powerOf, type Book } from './books.ts';
import type { HoldingModel } from './model.ts';
import { FULL_TORQUE } from './ranges.ts';

export const asking: Readonly<Record<Required, string>> = {
  idle: 'to stand in gear at idle',
  'take-off': 'to take off at 1500 rpm',
};

/** What a book prints, or what the engine makes of the same sizes, in the reader's units. */
export function bookNumber(book: Book, whose: 'book' | 'model', system: UnitSystem): string {
  const { prints } = books[book];
  const value = whose === 'book' ? prints.value : ours(book);
  return prints.kind === 'power'
    ? format(value, power, system)
    : format(value, workedTorque, system);
}

/** The sentence under the picture. */
export function says(model: HoldingModel, system: UnitSystem): string {
  const print = printer(system);
  const { build, torque: has, need, holds, needPressure, springPressure, givens } = model;
  const example = givens.example.value;
  if (example !== 'own' && example !== 'training') {
    const { prints, short } = books[example];
    const carried =
      prints.kind === 'power'
        ? `, at ${print(prints.rpm, speed)} ${print(powerOf(has.value, prints.rpm), power)}`
        : '';
    return `${short}: holds ${print(has.value, torque)}${carried}. The book says ${bookNumber(example, 'book', system)}.`;
  }
  const { pressure: kpa } = build.value;
  if (has.value === 0) {
    return `Slips: ${print(kpa, pressure)} does not beat the spring, which takes the first ${print(springPressure.value, pressure)}. The clutch carries nothing.`;
  }
  const asked = `${print(need.value, torque)} needed ${asking[givens.required.value]}`;
  const off = has.value > FULL_TORQUE ? ', off the top of the chart' : '';
  const verdict = holds.value
    ? `Holds: it can carry ${print(has.value, torque)}${off}, ${asked}.`
    : `Slips: it can carry ${print(has.value, torque)}, ${asked}.`;
  return `${verdict} That takes ${print(needPressure.value, pressure)} on the gauge.`;
}

/** Both demands, for the readouts: which of them this clutch meets. */
export const verdicts = (torqueHeld: number): Readonly<Record<Required, boolean>> => ({
  idle: torqueHeld >= needed.idle.torque,
  'take-off': torqueHeld >= needed['take-off'].torque,
});
