/**
 * Drawings that print a pressure or a flow, for prose: in each unit system once, from the engine's own state. A drawing
 * takes finished words for labels, so it has to be drawn twice; CSS shows one.
 */
import type { JSX } from 'preact';
import {
  clutchPackExample,
  ClutchPackDrawing,
  clutchPackReleased,
  HydraulicPathDrawing,
  PistonSpringDrawing,
  PumpRegulatorDrawing,
  SealingRingsDrawing,
  SpoolValveDrawing,
  TransferSealDrawing,
} from '../drawings/index.ts';
import { clutchTorque, litresPerMinute, type SteadyState, training } from '../engine/index.ts';
import { format } from '../quantity/print.ts';
import { area, force } from '../quantity/part-quantities.ts';
import { flow, length, pressure, torque } from '../quantity/quantities.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { MeasuredName } from './drawing-names.ts';
import { crack, gauge } from './numbers/entry.ts';

interface MeasuredDrawing {
  readonly draw: (id: string, system: UnitSystem) => JSX.Element;
  /** Under the drawing. Says so where a gap is drawn larger than it is. */
  readonly caption: string;
}

/** Full scale of the drawings' tints [Pa]. */
const FULL_SCALE = 1e6;
const share = (pascals: number): number => pascals / FULL_SCALE;
const kPa = (pascals: number, system: UnitSystem) => format(pascals / 1e3, pressure, system);
const lmin = (metres3: number, system: UnitSystem) =>
  format(litresPerMinute(metres3), flow, system);
const forward = (state: SteadyState) => {
  const found = state.circuits.forward;
  if (found === undefined) throw new Error('These drawings apply the forward clutch.');
  return found;
};

const cold = gauge({ tempC: 20 });
const hot = gauge({ tempC: 100 });
/** The crack of lesson 3, in millimetres. */
const CRACK_MM = 0.25;
const split = gauge({ tempC: 100, faults: crack(CRACK_MM) });
/** Clutch command at idle, which the pistons and plates of the drawings stand at. */
const applied = training.testPoints.idle.clutch;

function seal(state: SteadyState, crackMm: number, temp: 'cold' | 'hot') {
  const { pressure: clutch, parts } = forward(state);
  return (id: string, system: UnitSystem) => (
    <TransferSealDrawing
      id={id}
      state={{
        crackMm,
        pressure: share(clutch),
        temp,
        leak: litresPerMinute(parts.transferSeal),
        labels: {
          pressure: kPa(clutch, system),
          leak: lmin(parts.transferSeal, system),
          width: format(crackMm, length, system),
        },
      }}
    />
  );
}

export const measuredDrawings = {
  'piston-spring': {
    draw: (id, system) => {
      const oil = training.clutches.forward.area * applied;
      const spring = training.clutches.forward.springForce;
      const pushes = (value: number) => format(value, force, system);
      return (
        <PistonSpringDrawing
          id={id}
          state={{
            pressure: share(applied),
            force: { oil, spring, net: oil - spring },
            labels: {
              pressure: kPa(applied, system),
              area: format(training.clutches.forward.area * 1e4, area, system),
              oil: pushes(oil),
              spring: pushes(spring),
              net: pushes(oil - spring),
            },
          }}
        />
      );
    },
    caption:
      'Fluid pushes the piston to the right, the spring pushes it back. The three arrows at the foot are drawn to one scale.',
  },
  'clutch-released': {
    draw: (id, system) => (
      <ClutchPackDrawing
        id={id}
        state={{ ...clutchPackReleased, labels: { pressure: kPa(0, system) } }}
      />
    ),
    caption:
      'Released: the spring holds the piston back and the plates run free. The gaps between the plates are drawn larger than they are.',
  },
  'clutch-applied': {
    draw: (id, system) => (
      <ClutchPackDrawing
        id={id}
        state={{
          ...clutchPackExample,
          pressure: share(applied),
          labels: {
            pressure: kPa(applied, system),
            torque: format(clutchTorque(training.clutches.forward, applied), torque, system),
          },
        }}
      />
    ),
    caption: 'Applied: the piston squeezes the plates, and drum and hub turn as one.',
  },
  'transfer-seal-whole': {
    draw: seal(cold, 0, 'cold'),
    caption: 'A whole transfer seal carries the fluid from valve body to case and loses none.',
  },
  'transfer-seal-split': {
    draw: seal(split, CRACK_MM, 'hot'),
    caption:
      'The same seal, split, with hot fluid at idle. What gets out runs along the joint and back to the sump. The crack is drawn far larger than it is, in the seal and under the lens.',
  },
  'pump-regulator': {
    draw: (id, system) => (
      <PumpRegulatorDrawing
        id={id}
        state={{
          line: share(hot.linePressure),
          temp: 'hot',
          flows: {
            pump: litresPerMinute(hot.pumpFlow),
            toClutches: litresPerMinute(hot.pumpFlow - hot.leftOver),
            leftOver: litresPerMinute(hot.leftOver),
          },
          labels: {
            line: kPa(hot.linePressure, system),
            pump: lmin(hot.pumpFlow, system),
            leftOver: lmin(hot.leftOver, system),
          },
        }}
      />
    ),
    caption:
      'A healthy transmission at hot idle. The pump feeds the line, and what the line does not need leaves through the regulator. The clearances are left out here.',
  },
  'spool-valve': {
    draw: (id, system) => {
      const command = training.testPoints.idle.clutch;
      // 60 % open, by the engine's own proportional band, so 0.8 between exhaust (0) and line (1).
      const clutch = command - 0.6 * training.feed.band;
      return (
        <SpoolValveDrawing
          id={id}
          state={{
            position: 0.8,
            pressures: {
              line: share(hot.linePressure),
              clutch: share(clutch),
              command: share(command),
            },
            temp: 'hot',
            labels: {
              line: kPa(hot.linePressure, system),
              clutch: kPa(clutch, system),
              command: kPa(command, system),
            },
          }}
        />
      );
    },
    caption:
      'A spool valve at work, here one that feeds a clutch which is nearly full. The command pushes one end, clutch pressure and the spring push the other, and the lands open the way to line or to exhaust.',
  },
  'hydraulic-path': {
    draw: (id, system) => {
      const clutch = forward(hot);
      return (
        <HydraulicPathDrawing
          id={id}
          state={{
            line: { pressure: share(hot.linePressure), label: kPa(hot.linePressure, system) },
            circuits: {
              forward: {
                pressure: share(clutch.pressure),
                label: kPa(clutch.pressure, system),
                applied: true,
                holds: true,
                feed: litresPerMinute(clutch.feed),
              },
              reverse: { pressure: 0, label: kPa(0, system), applied: false },
              high: { pressure: 0, label: kPa(0, system), applied: false },
            },
            temp: 'hot',
            flows: {
              pump: litresPerMinute(hot.pumpFlow),
              leftOver: litresPerMinute(hot.leftOver),
            },
          }}
        />
      );
    },
    caption:
      'The whole way, from sump to clutch, with the forward clutch on. It is a map: sizes and distances are not to scale.',
  },
  'sealing-rings': {
    draw: (id, system) => {
      const { pressure: clutch, parts } = forward(hot);
      return (
        <SealingRingsDrawing
          id={id}
          state={{
            wear: 0,
            pressure: share(clutch),
            temp: 'hot',
            leak: litresPerMinute(parts.rings),
            labels: {
              pressure: kPa(clutch, system),
              leak: lmin(parts.rings, system),
              gap: format(training.leaks.forward.rings.height * 1e3, length, system),
            },
          }}
        />
      );
    },
    caption:
      'Two rings carry the fluid from the still sleeve into the turning shaft. The gap past each ring is drawn far larger than it is.',
  },
} as const satisfies Record<MeasuredName, MeasuredDrawing>;

/** One of them in one unit system. */
export function Measured(props: {
  readonly of: MeasuredName;
  readonly id: string;
  readonly system: UnitSystem;
}): JSX.Element {
  return measuredDrawings[props.of].draw(props.id, props.system);
}
