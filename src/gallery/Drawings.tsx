import type { JSX } from 'preact';
import { circuitFlows, makeCar, readingOf, REFERENCE_CRACK_MM } from '../car/index.ts';
import {
  AirRigDrawing,
  airRigExample,
  BenchOpenDrawing,
  CircuitDrawing,
  circuitFrom,
  ClutchPackDrawing,
  clutchPackExample,
  clutchPackReleased,
  ComplaintCardDrawing,
  ConnectorSleeveDrawing,
  ControllerStatesDrawing,
  controllerStatesExample,
  ConverterDrawing,
  converterExample,
  ConvincingRecordDrawing,
  ElectronicRangeDrawing,
  FilterBuildDrawing,
  BridgeSeatDrawing,
  GaugeHookupDrawing,
  SealStatesDrawing,
  ReachLadderDrawing,
  HoursOrDegreesDrawing,
  MechanicalRangeDrawing,
  OpenTogetherDrawing,
  FilterCutDrawing,
  FreezeFrameDrawing,
  LogPatternsDrawing,
  LogQueueDrawing,
  logQueueExample,
  PanLevelDrawing,
  panLevelExample,
  ParkPawlDrawing,
  PumpRegulatorDrawing,
  pumpRegulatorExample,
  SealingRingsDrawing,
  sealingRingsExample,
  SpeedSensorsDrawing,
  speedSensorsExample,
  WholeCarDrawing,
} from '../drawings/index.ts';
import { wholeCarExample } from '../drawings/whole-car/state.ts';
import { measuredNames } from '../lessons/drawing-names.ts';
import { Measured } from '../lessons/measured/measured-drawings.tsx';

/** One drawing in one state, under an id that its snapshot bears too. */
interface Drawn {
  readonly id: string;
  readonly draw: (id: string) => JSX.Element;
}

function circuitAt(tempC: number, crackMm: number): Drawn['draw'] {
  const reading = readingOf(makeCar({ crackMm }), { tempC });
  const state = circuitFrom(
    {
      lineKpa: reading.lineKpa,
      clutchKpa: reading.clutches.forward.kPa,
      flows: circuitFlows(reading, 'forward'),
      holds: crackMm === 0,
      tempC,
      crackMm,
    },
    'si',
  );
  return (id) => <CircuitDrawing id={id} state={state} />;
}

/** Every drawing in the states that look different, the measured ones of the lessons among them. */
const drawings: readonly Drawn[] = [
  { id: 'circuit-cold-whole', draw: circuitAt(20, 0) },
  { id: 'circuit-hot-split', draw: circuitAt(100, REFERENCE_CRACK_MM) },
  { id: 'whole-car-holds', draw: (id) => <WholeCarDrawing id={id} state={wholeCarExample} /> },
  {
    id: 'whole-car-parked',
    draw: (id) => (
      <WholeCarDrawing
        id={id}
        state={{
          ...wholeCarExample,
          temp: 'hot',
          grip: 'slips',
          parked: true,
          failSafe: true,
          fault: 'seal',
          pressures: { line: 0.5, clutch: 0.12, wanted: 0.25 },
        }}
      />
    ),
  },
  ...(['P', 'R', 'N', 'D'] as const).flatMap((range): readonly Drawn[] => [
    {
      id: `mechanical-${range}`,
      draw: (id) => <MechanicalRangeDrawing id={id} state={{ range }} />,
    },
    {
      id: `electronic-${range}`,
      draw: (id) => <ElectronicRangeDrawing id={id} state={{ range }} />,
    },
  ]),
  {
    id: 'mechanical-mis-set',
    draw: (id) => <MechanicalRangeDrawing id={id} state={{ range: 'D', misSet: true }} />,
  },
  {
    id: 'electronic-gave-up',
    draw: (id) => <ElectronicRangeDrawing id={id} state={{ range: 'D', failSafe: true }} />,
  },
  {
    id: 'electronic-no-power',
    draw: (id) => <ElectronicRangeDrawing id={id} state={{ range: 'D', power: false }} />,
  },
  { id: 'park-in', draw: (id) => <ParkPawlDrawing id={id} state={{ kind: 'cable', engage: 1 }} /> },
  {
    id: 'park-half',
    draw: (id) => <ParkPawlDrawing id={id} state={{ kind: 'cable', engage: 0.5 }} />,
  },
  { id: 'complaint-card', draw: (id) => <ComplaintCardDrawing id={id} /> },
  { id: 'convincing-record', draw: (id) => <ConvincingRecordDrawing id={id} /> },
  { id: 'freeze-frame', draw: (id) => <FreezeFrameDrawing id={id} /> },
  { id: 'seal-states', draw: (id) => <SealStatesDrawing id={id} /> },
  { id: 'filter-build', draw: (id) => <FilterBuildDrawing id={id} /> },
  { id: 'bridge-seat', draw: (id) => <BridgeSeatDrawing id={id} /> },
  { id: 'gauge-hookup', draw: (id) => <GaugeHookupDrawing id={id} /> },
  { id: 'open-together', draw: (id) => <OpenTogetherDrawing id={id} /> },
  { id: 'reach-ladder', draw: (id) => <ReachLadderDrawing id={id} /> },
  { id: 'hours-or-degrees', draw: (id) => <HoursOrDegreesDrawing id={id} /> },
  { id: 'log-queue', draw: (id) => <LogQueueDrawing id={id} state={logQueueExample} /> },
  { id: 'log-patterns', draw: (id) => <LogPatternsDrawing id={id} /> },
  { id: 'filter-cut', draw: (id) => <FilterCutDrawing id={id} /> },
  { id: 'bench-open', draw: (id) => <BenchOpenDrawing id={id} /> },
  { id: 'air-rig', draw: (id) => <AirRigDrawing id={id} state={airRigExample} /> },
  {
    id: 'air-rig-bad',
    draw: (id) => (
      <AirRigDrawing
        id={id}
        state={{
          ...airRigExample,
          held: 25,
          applied: false,
          leaks: { pistonSeal: 0.93, rings: 0.1 },
        }}
      />
    ),
  },
  {
    id: 'air-rig-seal',
    draw: (id) => (
      <AirRigDrawing
        id={id}
        state={{ ...airRigExample, part: 'seal', held: 32, wet: false, leaks: { transferSeal: 1 } }}
      />
    ),
  },
  { id: 'connector-sleeve', draw: (id) => <ConnectorSleeveDrawing id={id} /> },
  { id: 'pan-level', draw: (id) => <PanLevelDrawing id={id} state={panLevelExample} /> },
  {
    id: 'pan-level-low',
    draw: (id) => (
      <PanLevelDrawing
        id={id}
        state={{
          ...panLevelExample,
          middleMm: 6,
          mouthMm: -3,
          air: 0.2,
          thermometer: 0.6,
        }}
      />
    ),
  },
  { id: 'converter', draw: (id) => <ConverterDrawing id={id} state={converterExample} /> },
  { id: 'clutch-on', draw: (id) => <ClutchPackDrawing id={id} state={clutchPackExample} /> },
  { id: 'clutch-off', draw: (id) => <ClutchPackDrawing id={id} state={clutchPackReleased} /> },
  {
    id: 'clutch-slips',
    draw: (id) => (
      <ClutchPackDrawing id={id} state={{ ...clutchPackExample, pressure: 0.15, holds: false }} />
    ),
  },
  { id: 'pump', draw: (id) => <PumpRegulatorDrawing id={id} state={pumpRegulatorExample} /> },
  {
    id: 'rings-worn',
    draw: (id) => (
      <SealingRingsDrawing id={id} state={{ ...sealingRingsExample, wear: 1, leak: 3 }} />
    ),
  },
  { id: 'sensors', draw: (id) => <SpeedSensorsDrawing id={id} state={speedSensorsExample} /> },
  {
    id: 'controller',
    draw: (id) => <ControllerStatesDrawing id={id} state={controllerStatesExample} />,
  },
  ...measuredNames.map((of): Drawn => ({
    id: `lesson-${of}`,
    draw: (id) => <Measured of={of} id={id} system="us" />,
  })),
];

export const drawingIds = drawings.map(({ id }) => id);

/** One of them by its id. */
export const ShownDrawing = ({ of }: { readonly of: string }): JSX.Element | undefined =>
  drawings.find(({ id }) => id === of)?.draw(`gallery-${of}`);
