import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { NamedBox } from '../parts/wire.tsx';
import {
  describeControllerStates,
  printed,
  type ControllerStateName,
  type ControllerStatesState,
} from './state.ts';
import { words } from './words.en.ts';

const { boxes, states, when } = words;

/** One arrow: a line with a head at its end, down or to the right. */
function Arrow({ d, x, y, right = false }: { d: string; x: number; y: number; right?: boolean }) {
  const head = right ? `M${x} ${y}l-9 -5v10z` : `M${x} ${y}l-5 -9h10z`;
  return (
    <g>
      <path class="dw-line" d={d} />
      <path class="dw-ink" d={head} />
    </g>
  );
}

/** A fail-safe state: hatched on its left edge, as its stretch on the strips is. */
function FailSafe({
  id,
  x,
  lines,
  on,
}: {
  id: string;
  x: number;
  lines: readonly string[];
  on: boolean;
}) {
  return (
    <g>
      <NamedBox x={x} y={466} width={118} height={58} lines={lines} strong={on} />
      <Cut id={id} d={box(x, 466, 9, 58)} />
    </g>
  );
}

/**
 * The state machine of the training controller, top to bottom in the order a bad engagement goes
 * through it. Conditions stand at the arrows with the numbers given.
 */
export function ControllerStatesDrawing({
  id,
  state,
}: {
  id: string;
  state: ControllerStatesState;
}): JSX.Element {
  const { current, parkSpeed } = state;
  const { look, watch } = printed(state);
  const on = (name: ControllerStateName): boolean => current === name;
  return (
    <Frame
      id={id}
      width={390}
      height={560}
      title={current ? words.titleNow({ state: states[current] }) : words.title}
      desc={describeControllerStates(state)}
    >
      <NamedBox x={30} y={4} width={150} height={44} lines={boxes.waiting} strong={on('waiting')} />
      <Arrow d="M105 48V86" x={105} y={94} />
      <Label x={118} y={76} lines={when.selected} />

      <NamedBox
        x={30}
        y={94}
        width={150}
        height={48}
        lines={boxes.engaging}
        strong={on('engaging')}
      />
      <Arrow d="M105 142V192" x={105} y={200} />
      <Label x={118} y={158} lines={when.looked(look)} />

      <NamedBox
        x={30}
        y={200}
        width={150}
        height={44}
        lines={boxes.watching}
        strong={on('watching')}
      />
      <path class="dw-line" d="M30 118H12V266H105" />
      <circle class="dw-ink" cx="105" cy="266" r="3.5" />
      <Arrow d="M105 244V318" x={105} y={326} />
      <Label x={118} y={262} lines={when.slipped(watch)} />

      <NamedBox
        x={30}
        y={326}
        width={150}
        height={48}
        lines={boxes.pressureRaised(watch)}
        strong={on('pressureRaised')}
      />
      <path class="dw-line" d="M105 374V412M63 412H327" />
      <Label x={118} y={392} lines={when.again(watch)} />

      <Arrow d="M63 412V458" x={63} y={466} />
      <Arrow d="M195 412V458" x={195} y={466} />
      <Arrow d="M327 412V458" x={327} y={466} />
      <Label x={70} y={432} lines={when.cableHolds} />
      <Label x={202} y={432} lines={when.cableOrRolling} />
      <Label x={334} y={432} lines={when.wireSlow} />
      <FailSafe id={id} x={4} lines={boxes.failSafeDefaultGear} on={on('failSafeDefaultGear')} />
      <FailSafe id={id} x={136} lines={boxes.failSafeNeutral} on={on('failSafeNeutral')} />
      <FailSafe id={id} x={268} lines={boxes.failSafePark} on={on('failSafePark')} />
      <Arrow d="M254 495H260" x={268} y={495} right />
      <Label x={386} y={544} anchor="end" lines={when.parksLater({ speed: parkSpeed })} />
    </Frame>
  );
}
