import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { UnitText } from '../quantity/unit-system.ts';
import type { Axis, PlacedAxis } from './axis.ts';
import type { ChartHeight } from './ChartFigure.tsx';

/** Says what a line means; the style follows. Cold is dashed, hot is solid, and only these two have a hue. */
export type SeriesKind = 'cold' | 'hot' | 'plain' | 'healthy';

export interface Series {
  readonly id: string;
  /** Stands at the end of the line, or where the line leaves the chart for good. Keep it to three words. */
  readonly label: string;
  readonly kind: SeriesKind;
  /** One value for each x; `null` where there is none. */
  readonly y: readonly (number | null)[];
}

/** A named stretch of the y axis. `needed` is a plain outlined band, `holds` filled, `slips` hatched. */
export interface Band {
  readonly id: string;
  /** Left empty where another band says it. */
  readonly label: string;
  readonly kind: 'holds' | 'slips' | 'needed';
  readonly from: number;
  readonly to: number;
}

/** One point that matters, with words on it: "lets go at 71 °C". */
export interface Mark {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly words: UnitText;
  /** `now` is the state the controls are at, drawn open; `crossing` is filled. */
  readonly kind?: 'now' | 'crossing';
}

/** Something that happened at an x, numbered on the picture and told below it. */
export interface EventMark {
  readonly x: number;
  readonly words: UnitText;
}

/** A band of states along x, such as what the controller is doing. */
export interface Strip {
  readonly id: string;
  readonly label: string;
  readonly states: readonly {
    readonly from: number;
    readonly to: number;
    readonly label: string;
    readonly kind: 'plain' | 'filled' | 'hatched';
  }[];
}

/** Where a chart has put its axes, in pixels. */
export interface PlacedPlot {
  readonly x: PlacedAxis;
  readonly y: PlacedAxis;
  /** Where the x ticks stand. */
  readonly foot: number;
  readonly frame: { readonly right: number };
}

export interface LineChartProps {
  /** Unique on the page. */
  readonly id: string;
  readonly name: string;
  readonly takeaway: UnitText;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  /** Rising, shared by all series; metric. */
  readonly x: readonly number[];
  readonly series: readonly Series[];
  readonly bands?: readonly Band[];
  readonly marks?: readonly Mark[];
  readonly events?: readonly EventMark[];
  readonly strips?: readonly Strip[];
  /** Pass the same signal to several charts and their cursors move together; metric x or null. */
  readonly cursor?: Signal<number | null>;
  /** The cursor is a given of its own: it is dragged, and stays where it was left. */
  readonly cursorStays?: boolean;
  /** What lies under the lines, as the range that one is known to (`doubt`). */
  readonly under?: (plot: PlacedPlot) => ComponentChildren;
  /** What lies over the picture besides the cursor, as a grip does. */
  readonly over?: (plot: PlacedPlot) => ComponentChildren;
  readonly height?: ChartHeight;
}
