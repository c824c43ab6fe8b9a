import type { PlacedPlot, SeriesKind } from './line-data.ts';
import { bandPath } from './path.ts';

export interface DoubtProps {
  readonly x: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly kind: SeriesKind;
}

/** The range that a line is known to, as a tint under it: for `under` of a LineChart. A module of its own, since few charts have one. */
export const doubt =
  ({ x, low, high, kind }: DoubtProps) =>
  (plot: PlacedPlot) => (
    <path class={`doubt ${kind}`} d={bandPath(x, low, high, plot.x.place, plot.y.place)} />
  );
