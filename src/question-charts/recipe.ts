import type { QuantityName } from '../quantity/by-name.ts';

/** One axis, over a fixed range in the metric unit of its quantity. */
export interface AxisAsked {
  readonly label: string;
  readonly quantity: QuantityName;
  readonly min: number;
  readonly max: number;
}

/** What a chart of a question shows. Every value comes from the engine. */
export interface Recipe {
  readonly about: string;
  readonly x: AxisAsked;
  readonly y: AxisAsked;
  /** Called A, B, C in the order they stand; a single one has no name. */
  readonly lines: readonly (readonly (readonly [x: number, y: number])[])[];
  /** Where the table reads the lines. */
  readonly tableAt: readonly number[];
}

/** Even steps from one value to another, both among them. */
export const steps = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);

/** A line through what something comes to at each of some places. */
export const along = (
  places: readonly number[],
  value: (at: number) => number,
): readonly (readonly [number, number])[] => places.map((at) => [at, value(at)]);
