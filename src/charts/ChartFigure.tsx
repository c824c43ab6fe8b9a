import type { ComponentChildren, RefObject } from 'preact';
import { DataTable, type TableData } from '../ui/DataTable.tsx';
import { still } from '../ui/still.ts';
import type { Size } from './use-size.ts';

export interface ChartFigureProps {
  readonly id: string;
  readonly name: string;
  /** One sentence that says what the picture shows in this state. */
  readonly takeaway: string;
  readonly box: RefObject<HTMLDivElement>;
  readonly size: Size;
  readonly tables: () => readonly TableData[];
  readonly height?: ChartHeight | undefined;
  /** The lower left corner is empty (beside the x title), so the table's handle may stand in it. */
  readonly corner?: boolean;
  /** Lies over the picture: the cursor. */
  readonly pad?: ComponentChildren;
  readonly children: ComponentChildren;
}

const Name = still(({ id, words }: { readonly id: string; readonly words: string }) => (
  <span class="chart-name" id={id}>
    {words}
  </span>
));

export type ChartHeight = 'short' | 'normal' | 'tall';

/** What every picture has: a name, a sentence, the drawing, and the numbers behind it. */
export function ChartFigure(props: ChartFigureProps) {
  const {
    id,
    name,
    takeaway,
    box,
    size,
    tables,
    height = 'normal',
    corner = false,
    pad,
    children,
  } = props;
  return (
    <figure class={corner ? 'chart chart-corner' : 'chart'} id={id} aria-labelledby={`${id}-name`}>
      <figcaption>
        <Name id={`${id}-name`} words={name} /> <span class="chart-takeaway">{takeaway}</span>
      </figcaption>
      <div class={`chart-plot chart-${height}`} ref={box}>
        {/* Hidden: its name and its sentence stand above, its values in the cursor and the table. */}
        <svg
          aria-hidden="true"
          viewBox={`0 0 ${Math.round(size.width)} ${Math.round(size.height)}`}
        >
          {children}
        </svg>
        {pad}
      </div>
      <DataTable tables={tables} />
    </figure>
  );
}
