import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';
import { box, Cut, Oil } from './hatch.tsx';
import { Spool } from './spool.tsx';

/** Along the bore from the middle of the line port. Every port is as wide as the next. */
export const PORT = 7;
export const PORTS = { ventR: -55, reverse: -45, line: -3.5, drive: 46.5, ventD: 56 } as const;
/** Where the spool stands for each range, from its place in Neutral. */
export const STROKE = { P: -40, R: -20, N: 0, D: 20 } as const;

type RangeLetter = keyof typeof STROKE;

/** In Park a land covers the line with this to spare; further than that nothing is drawn. */
const PARK_SPARE = 2.5;

/** Edges of the two lands along the bore: the left land, the groove between them, the right land. */
export function spoolAt(range: RangeLetter, short = 0) {
  const back = range === 'P' ? Math.min(short, PARK_SPARE) : range === 'R' ? short : -short;
  const s = roundPlace(STROKE[range] + back);
  return { left: s - 37.5, groove: s - 25, land: s + 33.5, right: s + 46 };
}

export interface ManualValveProps {
  id: string;
  /** The middle of the line port on the axis of the bore. */
  x: number;
  y: number;
  range: RangeLetter;
  /** How far the spool stands short of its place. */
  short: number;
  /** Shares of full scale: in the line, and in the passage that is fed. */
  line: number;
  fed: number;
  /** Where the rod ends, for the link from the plate. */
  rod: number;
}

/**
 * The manual valve: a spool with two lands in a bore with five ports, line in the middle, Reverse and Drive on either side, and a vent
 * beyond each. In Drive and Reverse the groove joins line to that passage while the other drains at its end. In Neutral the groove
 * stands on the line alone and both drain. In Park a land covers the line, and the groove joins Reverse to its vent. The porting is
 * the common one (common practice, no source).
 */
export function ManualValve(props: ManualValveProps): JSX.Element {
  const { id, x, y, range, short, line, fed, rod } = props;
  const { left, groove, land, right } = spoolAt(range, short);
  const up = (port: number): string => box(port, -18, PORT, 10);
  const down = (port: number): string => box(port, 8, PORT, 10);
  const { ventR, reverse, line: feed, drive, ventD } = PORTS;
  return (
    <g transform={`translate(${x} ${y})`}>
      <Cut
        id={id}
        d={`${box(-86, -18, 162, 36)}${box(-80, -8, 150, 16)}${box(-86, -3, 6, 6)}${up(reverse)}${up(drive)}${down(ventR)}${down(feed)}${down(ventD)}`}
      />
      <Oil
        id={id}
        d={`${box(-80, -8, left + 80, 16)}${box(right, -8, 70 - right, 16)}${down(ventR)}${down(ventD)}`}
        pressure={0}
      />
      <Oil id={id} d={up(reverse)} pressure={range === 'R' ? fed : 0} />
      <Oil id={id} d={up(drive)} pressure={range === 'D' ? fed : 0} />
      <Oil id={id} d={down(feed)} pressure={line} />
      <Oil id={id} d={box(groove, -8, land - groove, 16)} pressure={range === 'P' ? 0 : line} />
      <path
        class="dw-line"
        d={`M-80 -3V-8H${reverse}V-18M${reverse + PORT} -18V-8H${drive}V-18M${drive + PORT} -18V-8H70V8H${ventD + PORT}V18M${ventD} 18V8H${feed + PORT}V18M${feed} 18V8H${ventR + PORT}V18M${ventR} 18V8H-80V3`}
      />
      <path class="dw-solid" d={box(rod, -2.5, left - rod, 5)} />
      <Spool
        x={0}
        y={-8}
        bore={16}
        axis="x"
        lands={[
          { at: left, length: 12.5 },
          { at: land, length: 12.5 },
        ]}
      />
    </g>
  );
}
