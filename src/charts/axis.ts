import { printNumber } from '../quantity/language.ts';
import { type Quantity, toShown } from '../quantity/quantity.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { makeScale, tickDigits, ticksFor, type ScaleKind } from './scale.ts';

/**
 * One axis of a chart. `min` and `max` are metric and belong to the quantity, not to the data:
 * the same quantity keeps its range while a control moves, so that change is seen as change.
 */
export interface Axis {
  readonly label: string;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly scale?: ScaleKind;
}

export interface Tick {
  readonly place: number;
  readonly text: string;
}

export interface PlacedAxis {
  /** From a metric value to a place on the picture. */
  readonly place: (metric: number) => number;
  readonly ticks: readonly Tick[];
  /** "Clutch pressure, psi" */
  readonly title: string;
}

/**
 * An axis laid along `range` in the reader's units: round numbers in psi for one reader, in kPa
 * for the other, over the same stretch of reality.
 */
export function placeAxis(
  { label, quantity, min, max, scale: kind = 'linear' }: Axis,
  system: UnitSystem,
  range: readonly [number, number],
): PlacedAxis {
  const shown = (metric: number): number => toShown(metric, quantity, system);
  const scale = makeScale(kind, [shown(min), shown(max)], range);
  const marks = ticksFor(kind, shown(min), shown(max));
  const digits = kind === 'log' ? null : tickDigits(marks);
  const { symbol } = quantity[system];
  return {
    place: (metric) => scale(shown(metric)),
    ticks: marks.map((mark) => ({
      place: scale(mark),
      text: printNumber(mark, digits ?? tickDigits([mark])),
    })),
    title: symbol === '' ? label : `${label}, ${symbol}`,
  };
}

/** The widest tick text in characters, for the margin. */
export const widestTick = (axis: Axis, system: UnitSystem): number =>
  Math.max(...placeAxis(axis, system, [0, 1]).ticks.map((tick) => tick.text.length));
