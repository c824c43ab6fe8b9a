import type { JSX } from 'preact';
import { Label } from '../parts/label.tsx';
import { words as park } from '../parts/park-words.en.ts';
import { NamedBox, Wire } from '../parts/wire.tsx';
import type { RangeState } from './state.ts';
import type { RangeLayout, Shared } from './layouts.ts';
import { words } from './words.en.ts';

/** The controller with its wires; inked where it has given up. */
export function ControllerBox({
  at,
  state,
  alive,
}: {
  at: Pick<Shared, 'controller' | 'wires'>;
  state: RangeState;
  /** Whether the wire with this number still does something. */
  alive: (wire: number) => boolean;
}): JSX.Element {
  const dead = state.power === false;
  return (
    <>
      {at.wires.map((wire, i) => (
        <Wire key={wire.points} {...wire} alive={alive(i)} />
      ))}
      <NamedBox
        {...at.controller}
        lines={[park.controller, ...(dead ? [words.dead] : state.failSafe ? [words.failSafe] : [])]}
        strong={state.failSafe === true && !dead}
      />
    </>
  );
}

/** What the picture comes to: Park first, then what is fed. Upright there is room for one long line. */
export const Said = ({
  x,
  y,
  parked,
  lines,
  layout,
}: {
  x: number;
  y: number;
  parked: boolean;
  lines: readonly string[];
  layout: RangeLayout;
}) => (
  <Label
    x={x}
    y={y}
    lines={[
      `*${parked ? park.holds : park.out}`,
      ...(layout === 'tall' ? [lines.join(' ')] : lines),
    ]}
  />
);
