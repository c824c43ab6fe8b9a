/**
 * Drawings that print a pressure or a flow, for prose: in each unit system once, from the engine's own state. A drawing
 * takes finished words for labels, so it has to be drawn twice; CSS shows one.
 */
import type { JSX } from 'preact';
import {
  AirRigDrawing,
  clutchPackExample,
  ClutchPackDrawing,
  clutchPackReleased,
  HydraulicPathDrawing,
  PanLevelDrawing,
  PistonSpringDrawing,
  PumpRegulatorDrawing,
  SealingRingsDrawing,
  SpoolValveDrawing,
  TransferSealDrawing,
} from '../../drawings/index.ts';
import { GEARS_MM, levelOf, MARK_MM, MIDDLE_MM, WINDOW_C } from '../../car/pan.ts';
import { airReading } from '../../car/air-bench.ts';
import {
  COLD_C,
  makeCar,
  readingOf,
  REFERENCE_CRACK_MM,
  soundCar,
  type Reading,
} from '../../car/index.ts';
import {
  clutchTorque,
  DEFAULT_FLUID,
  feedFlow,
  fluidAt,
  fluidClasses,
  makeFluid,
  training,
} from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { area, force } from '../../quantity/part-quantities.ts';
import { flow, length, percent, pressure, temperature, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { MeasuredName } from '../drawing-names.ts';
import { words } from './words.en.ts';

interface MeasuredDrawing {
  readonly draw: (id: string, system: UnitSystem) => JSX.Element;
  /** Under the drawing. Says so where a gap is drawn larger than it is. */
  readonly caption: string;
}

/** Full scale of the drawings' tints [kPa]. */
const FULL_SCALE = 1000;
const share = (kPa: number): number => kPa / FULL_SCALE;
const inKpa = (kPa: number, system: UnitSystem) => format(kPa, pressure, system);
const inLmin = (lmin: number, system: UnitSystem) => format(lmin, flow, system);

const at = (tempC: number, crackMm = 0): Reading => readingOf(makeCar({ crackMm }), { tempC });
const cold = at(20);
const hot = at(100);
const split = at(100, REFERENCE_CRACK_MM);
/** Clutch command at idle [kPa], which the pistons and plates of the drawings stand at. */
const applied = training.testPoints.idle.clutch / 1e3;
const torqueApplied = clutchTorque(training.clutches.forward, training.testPoints.idle.clutch);

function seal(state: Reading, crackMm: number, temp: 'cold' | 'hot') {
  const { kPa: clutch, feedLmin, leaksLmin } = state.clutches.forward;
  return (id: string, system: UnitSystem) => (
    <TransferSealDrawing
      id={id}
      state={{
        crackMm,
        pressure: share(clutch),
        temp,
        feed: feedLmin,
        leak: leaksLmin.transferSeal,
        labels: {
          pressure: inKpa(clutch, system),
          leak: inLmin(leaksLmin.transferSeal, system),
          width: format(crackMm, length, system),
        },
      }}
    />
  );
}

export const measuredDrawings = {
  'piston-spring': {
    draw: (id, system) => {
      const oil = training.clutches.forward.area * training.testPoints.idle.clutch;
      const spring = training.clutches.forward.springForce;
      const pushes = (value: number) => format(value, force, system);
      return (
        <PistonSpringDrawing
          id={id}
          state={{
            pressure: share(applied),
            force: { oil, spring, net: oil - spring },
            labels: {
              pressure: inKpa(applied, system),
              area: format(training.clutches.forward.area * 1e4, area, system),
              oil: pushes(oil),
              spring: pushes(spring),
              net: pushes(oil - spring),
            },
          }}
        />
      );
    },
    caption: words.pistonSpring,
  },
  'clutch-released': {
    draw: (id, system) => (
      <ClutchPackDrawing
        id={id}
        state={{ ...clutchPackReleased, labels: { pressure: inKpa(0, system) } }}
      />
    ),
    caption: words.clutchReleased,
  },
  'clutch-applied': {
    draw: (id, system) => (
      <ClutchPackDrawing
        id={id}
        state={{
          ...clutchPackExample,
          pressure: share(applied),
          labels: {
            pressure: inKpa(applied, system),
            torque: format(torqueApplied, torque, system),
          },
        }}
      />
    ),
    caption: words.clutchApplied,
  },
  'transfer-seal-whole': {
    draw: seal(cold, 0, 'cold'),
    caption: words.transferSealWhole,
  },
  'transfer-seal-split': {
    draw: seal(split, REFERENCE_CRACK_MM, 'hot'),
    caption: words.transferSealSplit,
  },
  'pump-regulator': {
    draw: (id, system) => (
      <PumpRegulatorDrawing
        id={id}
        state={{
          line: share(hot.lineKpa),
          temp: 'hot',
          flows: {
            pump: hot.pumpLmin,
            toClutches: hot.pumpLmin - hot.leftOverLmin,
            leftOver: hot.leftOverLmin,
          },
          labels: {
            line: inKpa(hot.lineKpa, system),
            pump: inLmin(hot.pumpLmin, system),
            leftOver: inLmin(hot.leftOverLmin, system),
          },
        }}
      />
    ),
    caption: words.pumpRegulator,
  },
  'spool-valve': {
    draw: (id, system) => {
      const command = applied;
      // 60 % open, by the engine's own proportional band, so 0.8 between exhaust (0) and line (1).
      const clutch = command - (0.6 * training.feed.band) / 1e3;
      const fed = feedFlow(
        training.feed,
        { line: hot.lineKpa * 1e3, clutch: clutch * 1e3, command: command * 1e3 },
        fluidAt(makeFluid(fluidClasses[DEFAULT_FLUID]), 100),
      );
      return (
        <SpoolValveDrawing
          id={id}
          state={{
            position: 0.8,
            pressures: {
              line: share(hot.lineKpa),
              clutch: share(clutch),
              command: share(command),
            },
            flow: fed * 6e4,
            temp: 'hot',
            labels: {
              line: inKpa(hot.lineKpa, system),
              clutch: inKpa(clutch, system),
              command: inKpa(command, system),
            },
          }}
        />
      );
    },
    caption: words.spoolValve,
  },
  'hydraulic-path': {
    draw: (id, system) => {
      const clutch = hot.clutches.forward;
      return (
        <HydraulicPathDrawing
          id={id}
          state={{
            line: { pressure: share(hot.lineKpa), label: inKpa(hot.lineKpa, system) },
            circuits: {
              forward: {
                pressure: share(clutch.kPa),
                label: inKpa(clutch.kPa, system),
                applied: true,
                holds: true,
                feed: clutch.feedLmin,
              },
              reverse: { pressure: 0, label: inKpa(0, system), applied: false },
              high: { pressure: 0, label: inKpa(0, system), applied: false },
            },
            temp: 'hot',
            flows: {
              pump: hot.pumpLmin,
              leftOver: hot.leftOverLmin,
            },
          }}
        />
      );
    },
    caption: words.hydraulicPath,
  },
  'sealing-rings': {
    draw: (id, system) => {
      const { kPa: clutch, feedLmin, leaksLmin } = hot.clutches.forward;
      return (
        <SealingRingsDrawing
          id={id}
          state={{
            wear: 0,
            pressure: share(clutch),
            temp: 'hot',
            leak: leaksLmin.rings,
            onward: feedLmin - leaksLmin.rings,
            labels: {
              pressure: inKpa(clutch, system),
              leak: inLmin(leaksLmin.rings, system),
              gap: format(training.leaks.forward.rings.height * 1e3, length, system),
            },
          }}
        />
      );
    },
    caption: words.sealingRings,
  },
  'pan-level': {
    draw: (id, system) => {
      const level = (tempC: number) =>
        levelOf({
          offL: 0,
          tempC,
          engineRpm: training.testPoints.idle.engineRpm,
          place: 'flat',
        });
      const { middleMm, mouthMm } = level(WINDOW_C.middle);
      return (
        <PanLevelDrawing
          id={id}
          state={{
            middleMm,
            mouthMm,
            minMm: MIDDLE_MM - MARK_MM,
            maxMm: MIDDLE_MM + MARK_MM,
            gearsMm: GEARS_MM,
            air: 0,
            other: { mm: level(COLD_C).middleMm, words: format(COLD_C, temperature, system) },
            labels: {
              level: format(WINDOW_C.middle, temperature, system),
              air: format(0, percent, system),
            },
          }}
        />
      );
    },
    caption: words.panLevel,
  },
  'air-rig': {
    draw: (id, system) => {
      const rig = { supply: 275, hole: 1.5, wet: true };
      const { held, thud, ways } = airReading(soundCar, 'forward', rig);
      return (
        <AirRigDrawing
          id={id}
          state={{
            part: 'circuit',
            held,
            wet: rig.wet,
            applied: thud,
            leaks: { rings: ways.rings ?? 0 },
            labels: {
              supply: format(rig.supply, pressure, system),
              hole: format(rig.hole, length, system),
              held: format(held, percent, system),
            },
          }}
        />
      );
    },
    caption: words.airRig,
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
