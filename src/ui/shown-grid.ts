import { decimalsFor } from '../quantity/print.ts';
import { fromShown, toShown, type Quantity } from '../quantity/quantity.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { tidy } from './step-value.ts';

export interface Grid {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

/** A control's stops in the reader's units. */
export interface ShownGrid extends Grid {
  /** The metric value of a stop; the two ends are the control's own limits. */
  readonly metric: (stop: number) => number;
  /** Where a metric value stands on it, between stops or on one. */
  readonly place: (metric: number) => number;
}

/** 1, 2 or 5 times a power of ten, the nearest to a step. */
function roundStep(step: number): number {
  const decade = 10 ** Math.floor(Math.log10(step));
  const [nearest = decade] = [1, 2, 5, 10]
    .map((times) => times * decade)
    .sort((a, b) => Math.abs(Math.log(a / step)) - Math.abs(Math.log(b / step)));
  return nearest;
}

/**
 * A grid laid in metric units, as the reader of another unit would lay it: 0 to 0.4 mm by 0.01 becomes 0 to 16 thousandths
 * by 1, and 1 °C becomes 2 °F. A stop is a round number as it is printed, so no two neighbours print alike and none prints
 * as 9.8: the price is fewer stops in a coarse unit. Any value between can still be typed, or come by a link, and stays what
 * it is. The value itself remains metric; switching units moves nothing.
 */
export function shownGrid(grid: Grid, quantity: Quantity, system: UnitSystem): ShownGrid {
  const { factor, zero, digits } = quantity[system];
  if (factor === 1 && zero === 0)
    return { ...grid, metric: (stop) => stop, place: (metric) => metric };
  const [low, high] = [toShown(grid.min, quantity, system), toShown(grid.max, quantity, system)];
  const [decimals] = decimalsFor(Math.max(Math.abs(low), Math.abs(high)), digits);
  const step = Math.max(roundStep(grid.step * factor), 10 ** -decimals);
  const onGrid = (shown: number): number => tidy(Math.round(shown / step) * step, step);
  const [min, max] = [onGrid(low), onGrid(high)];
  // A value made by a stop is on it, whatever dust two conversions left: or a press would lead nowhere.
  const nearStop = (shown: number): number =>
    Math.abs(shown - onGrid(shown)) < step * 1e-3 ? onGrid(shown) : shown;
  const inside = (metric: number): number => Math.min(grid.max, Math.max(grid.min, metric));
  return {
    min,
    max,
    step,
    metric: (stop) =>
      stop <= min
        ? grid.min
        : stop >= max
          ? grid.max
          : inside(Math.round(fromShown(stop, quantity, system) * 1e6) / 1e6),
    place: (metric) =>
      metric <= grid.min
        ? min
        : metric >= grid.max
          ? max
          : nearStop(Math.min(max, Math.max(min, toShown(metric, quantity, system)))),
  };
}
