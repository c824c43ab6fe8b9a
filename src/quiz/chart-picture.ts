/** A chart that goes with a question: drawn when the site is built, plain data on its way. */
import type { Passage } from './passage.ts';

export interface PictureAxis {
  readonly title: string;
  readonly ticks: readonly { readonly place: number; readonly text: string }[];
}

interface InBothUnits {
  readonly si: PictureAxis;
  readonly us: PictureAxis;
}

export interface ChartPicture {
  /** What is drawn, not what it shows. */
  readonly about: Passage;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: InBothUnits;
  readonly y: InBothUnits;
  /** Each with its letter, and where that stands; a chart with one line has none. */
  readonly lines: readonly {
    readonly path: string;
    readonly letter: string;
    readonly at: readonly [x: number, y: number];
  }[];
  /** The same in numbers, for whoever cannot see it. */
  readonly head: readonly string[];
  readonly rows: readonly (readonly Passage[])[];
}
