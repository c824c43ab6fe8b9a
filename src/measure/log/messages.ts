import type {
  ColumnTrouble,
  Cut,
  FileTrouble,
  LeftOut,
  Layout,
  LogRead,
  Mapping,
  Ratios,
} from '../../log/index.ts';

/** What the page asks of the worker. */
export type Ask =
  | {
      readonly kind: 'open';
      readonly file: Blob;
      readonly given: Partial<Pick<Layout, 'separator' | 'decimalMark'>>;
    }
  | { readonly kind: 'read'; readonly mapping: Mapping; readonly ratios: Ratios }
  | {
      readonly kind: 'cut';
      readonly from: number;
      readonly to: number;
      readonly zero: number;
      readonly ratio: number;
    };

export interface Opened {
  readonly kind: 'opened';
  readonly layout: Layout;
  readonly rows: number;
  /** Rows that hold no readings. */
  readonly skipped: number;
  /** Of each column, the different things that it says; empty where there are too many to be a range. */
  readonly sayings: readonly (readonly string[])[];
}
export interface Read {
  readonly kind: 'read';
  readonly troubles: readonly ColumnTrouble[];
  readonly log?: LogRead;
  readonly left: LeftOut;
  /** One for each engagement, its zero at selection. */
  readonly cuts: readonly Cut[];
}

/** What the worker answers. */
export type Answer =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'refused'; readonly trouble: FileTrouble }
  | Opened
  | Read
  | { readonly kind: 'cut'; readonly cut: Cut }
  /** Something that nobody foresaw. */
  | { readonly kind: 'failed' };
