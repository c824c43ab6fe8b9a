import type { JSX } from 'preact';
import { box } from './hatch.tsx';

/** A land: where it starts along the bore and how long it is, in drawing units from the spool's own origin. */
export interface Land {
  at: number;
  length: number;
}

export interface SpoolProps {
  x: number;
  y: number;
  /** Bore diameter in drawing units. */
  bore: number;
  lands: readonly Land[];
  axis: 'x' | 'y';
}

/** Spool: lands that fill the bore, joined by a stem. Not cut: turned parts on their own axis are drawn whole. */
export function Spool({ x, y, bore, lands, axis }: SpoolProps): JSX.Element | null {
  const first = lands[0];
  const last = lands.at(-1);
  if (!first || !last) return null;
  const stem = bore * 0.36;
  const off = (bore - stem) / 2;
  const start = first.at + first.length;
  const reach = last.at - start;
  const bar =
    axis === 'x' ? box(x + start, y + off, reach, stem) : box(x + off, y + start, stem, reach);
  return (
    <g>
      {reach > 0 && <path class="dw-solid" d={bar} />}
      {lands.map((l, i) => (
        <path
          // By place in the row: by its place along the bore every move would make a new node.
          key={i}
          class="dw-solid"
          d={axis === 'x' ? box(x + l.at, y, l.length, bore) : box(x, y + l.at, bore, l.length)}
        />
      ))}
    </g>
  );
}
