import { format, formatNumber } from '../quantity/print.ts';
import { ratio } from '../quantity/part-quantities.ts';
import { percent as share, seconds, speed } from '../quantity/quantities.ts';
import type { JSX } from 'preact';
import { Frame } from './parts/frame.tsx';
import { box, Cut } from './parts/hatch.tsx';
import { Label } from './parts/label.tsx';
import { NamedBox } from './parts/wire.tsx';

/** The controller's states by the names the model gives them. */
export type ControllerStateName =
  | 'waiting'
  | 'engaging'
  | 'watching'
  | 'pressureRaised'
  | 'failSafeNeutral'
  | 'failSafePark'
  | 'failSafeDefaultGear';

export interface ControllerStatesState {
  /** Inked; none where the diagram stands alone. */
  current?: ControllerStateName | undefined;
  /** Limits and times that stand at the arrows. */
  settings: {
    readonly engagementSlipRpm: number;
    /** [s] */
    readonly engagementTime: number;
    readonly ratioSlipRpm: number;
    /** Share of turbine speed, 0 to 1. */
    readonly ratioSlipShare: number;
    /** [s] */
    readonly ratioTime: number;
    /** Times the pressure before. */
    readonly pressureRaise: number;
  };
  /** As it should be read, units and all. */
  parkSpeed: string;
}

export const controllerStatesExample: ControllerStatesState = {
  settings: {
    engagementSlipRpm: 100,
    engagementTime: 1.5,
    ratioSlipRpm: 80,
    ratioSlipShare: 0.03,
    ratioTime: 0.3,
    pressureRaise: 1.3,
  },
  parkSpeed: '3.1 mph',
};

const NAMES: Record<ControllerStateName, string> = {
  waiting: 'In Park',
  engaging: 'Waits for the turbine',
  watching: 'Watches slip',
  pressureRaised: 'Pressure raised',
  failSafeNeutral: 'Fail-safe: Neutral',
  failSafePark: 'Fail-safe: Park',
  failSafeDefaultGear: 'Fail-safe: one gear held',
};

export function describeControllerStates(s: ControllerStatesState): string {
  const { engagementSlipRpm, engagementTime, ratioSlipRpm, ratioSlipShare, ratioTime } = s.settings;
  const slip = `slip over ${format(ratioSlipRpm, speed, 'si')}, or over ${format(100 * ratioSlipShare, share, 'si')} of turbine speed if that is more, for ${format(ratioTime, seconds, 'si')}`;
  const now = s.current ? ` Now: ${NAMES[s.current]}.` : '';
  return `Seven states. In Park, until a range is selected. Then it waits for the turbine; ${format(engagementTime, seconds, 'si')} after selection it looks once, notes slip over ${format(engagementSlipRpm, speed, 'si')} as an engagement not finished, and watches slip. From either state, moving or on the throttle, ${slip} leads to raised pressure, ${formatNumber(s.settings.pressureRaise, ratio, 'si')} times as high. The same once more stores the code and leads to fail-safe. With a cable, either one gear is held or the clutches vent to Neutral. With electronic selection it is Park if slower than ${s.parkSpeed}, else Neutral, and Park once it is.${now}`;
}

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
function FailSafe({ id, x, name, on }: { id: string; x: number; name: string; on: boolean }) {
  return (
    <g>
      <NamedBox x={x} y={466} width={118} height={58} lines={['Fail-safe:', name]} strong={on} />
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
  state = controllerStatesExample,
}: {
  id: string;
  state?: ControllerStatesState | undefined;
}): JSX.Element {
  const { current, settings, parkSpeed } = state;
  const on = (name: ControllerStateName): boolean => current === name;
  return (
    <Frame
      id={id}
      width={390}
      height={560}
      title={current ? `Controller states, now: ${NAMES[current]}` : 'Controller states'}
      desc={describeControllerStates(state)}
    >
      <NamedBox x={30} y={4} width={150} height={44} lines={['In Park']} strong={on('waiting')} />
      <Arrow d="M105 48V86" x={105} y={94} />
      <Label x={118} y={76} lines={['a range is selected']} />

      <NamedBox
        x={30}
        y={94}
        width={150}
        height={48}
        lines={['Waits for', 'the turbine']}
        strong={on('engaging')}
      />
      <Arrow d="M105 142V192" x={105} y={200} />
      <Label
        x={118}
        y={158}
        lines={[
          `${format(settings.engagementTime, seconds, 'si')} after selection: one look,`,
          `slip over ${format(settings.engagementSlipRpm, speed, 'si')} is noted`,
        ]}
      />

      <NamedBox
        x={30}
        y={200}
        width={150}
        height={44}
        lines={['Watches slip']}
        strong={on('watching')}
      />
      <path class="dw-line" d="M30 118H12V266H105" />
      <circle class="dw-ink" cx="105" cy="266" r="3.5" />
      <Arrow d="M105 244V318" x={105} y={326} />
      <Label
        x={118}
        y={262}
        lines={[
          'moving or on the throttle, and slip',
          `over ${format(settings.ratioSlipRpm, speed, 'si')}, or over ${format(100 * settings.ratioSlipShare, share, 'si')} of`,
          `turbine speed, for ${format(settings.ratioTime, seconds, 'si')}`,
        ]}
      />

      <NamedBox
        x={30}
        y={326}
        width={150}
        height={48}
        lines={['Pressure raised', `${formatNumber(settings.pressureRaise, ratio, 'si')} times`]}
        strong={on('pressureRaised')}
      />
      <path class="dw-line" d="M105 374V412M63 412H327" />
      <Label
        x={118}
        y={392}
        lines={[`the same again, ${format(settings.ratioTime, seconds, 'si')}: code stored`]}
      />

      <Arrow d="M63 412V458" x={63} y={466} />
      <Arrow d="M195 412V458" x={195} y={466} />
      <Arrow d="M327 412V458" x={327} y={466} />
      <Label x={70} y={432} lines={['cable, if it', 'holds a gear']} />
      <Label x={202} y={432} lines={['cable, or still', 'rolling']} />
      <Label x={334} y={432} lines={['by wire,', 'slow']} />
      <FailSafe id={id} x={4} name="gear held" on={on('failSafeDefaultGear')} />
      <FailSafe id={id} x={136} name="Neutral" on={on('failSafeNeutral')} />
      <FailSafe id={id} x={268} name="Park" on={on('failSafePark')} />
      <Arrow d="M254 495H260" x={268} y={495} right />
      <Label x={386} y={544} anchor="end" lines={[`by wire: Park once slower than ${parkSpeed}`]} />
    </Frame>
  );
}
