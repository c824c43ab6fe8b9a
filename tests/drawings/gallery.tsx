import type { JSX } from 'preact';
import * as d from '../../src/drawings/index.ts';
import { describeWholeCar, wholeCarExample } from '../../src/drawings/whole-car/state.ts';
import type {
  CircuitState,
  HydraulicPathState,
  Range,
  RangeState,
} from '../../src/drawings/index.ts';

/** One picture in one state: how to draw it, what it should say, and the words that must be in it. */
export interface Sample {
  name: string;
  draw: (id: string) => JSX.Element;
  text: string;
  mentions: readonly string[];
}

export const circuitHot: CircuitState = {
  pressures: { line: 0.6, clutch: 0.19 },
  flows: { pump: 9.8, clearances: 4.2, feed: 3.9, rings: 0.8, crack: 3.1, leftOver: 1.7 },
  holds: false,
  temp: 'hot',
  crackMm: 0.25,
  labels: { line: '587 kPa', clutch: '191 kPa', crack: '3.1 L/min', width: '0.25 mm' },
};

const panLow: d.PanLevelState = {
  ...d.panLevelExample,
  middleMm: 4,
  mouthMm: -2,
  air: 0.12,
  temp: 'cold',
  thermometer: 0.3,
  labels: { level: '20 °C', air: '12 %' },
};
const panHigh: d.PanLevelState = {
  ...d.panLevelExample,
  middleMm: 28,
  mouthMm: 28,
  temp: 'hot',
  other: { mm: 6.5, words: '20 °C' },
  labels: { level: '100 °C', air: '0 %' },
};
const pathHot: HydraulicPathState = {
  ...d.hydraulicPathExample,
  temp: 'hot',
  circuits: {
    forward: { pressure: 0.19, label: '191 kPa', applied: true, holds: false, feed: 3.9 },
    reverse: { pressure: 0, label: '0 kPa', applied: false },
    high: { pressure: 0.4, label: '398 kPa', applied: true, holds: true, feed: 0.7 },
  },
  faults: [{ id: 'transferSeal' }, { id: 'openPort', circuit: 'high' }],
};

const RANGES: readonly Range[] = ['P', 'R', 'N', 'D'];
const rangeStates: readonly RangeState[] = RANGES.flatMap((range) => [
  { range },
  { range, misSet: true },
  { range, failSafe: true },
  { range, failSafe: true, defaultGear: true },
  { range, failSafe: true, rolling: true },
  { range, power: false },
  { range, power: false, defaultGear: true },
  { range, power: false, rolling: true },
  { range, alive: { cable: false, solenoids: false, selector: false } },
]);

const sealSplit: d.TransferSealState = {
  crackMm: 0.28,
  pressure: 0.2,
  temp: 'hot',
  feed: 3.9,
  leak: 3.3,
  labels: { pressure: '207 kPa', leak: '3.3 L/min', width: '0.28 mm' },
};

const controllerStates: readonly d.ControllerStateName[] = [
  'waiting',
  'engaging',
  'watching',
  'pressureRaised',
  'failSafeNeutral',
  'failSafePark',
  'failSafeDefaultGear',
];

const airLabels = d.airRigExample.labels;
const airBad: d.AirRigState = {
  ...d.airRigExample,
  held: 25,
  applied: false,
  leaks: { pistonSeal: 0.93, rings: 0.1 },
  labels: { ...airLabels, held: '25 %' },
};
const airPort: d.AirRigState = {
  ...airBad,
  held: 9,
  wet: false,
  leaks: { openPort: 0.55, rings: 0.47 },
  labels: { ...airLabels, held: '9 %' },
};
const airSeal: d.AirRigState = {
  ...airBad,
  part: 'seal',
  held: 32,
  leaks: { transferSeal: 1 },
  labels: { ...airLabels, held: '32 %' },
};

export const samples: readonly Sample[] = [
  {
    name: 'whole car, standing in Drive',
    draw: (id) => <d.WholeCarDrawing id={id} state={wholeCarExample} />,
    text: describeWholeCar(wholeCarExample),
    mentions: ['20 °C', '700 rpm', '500 kPa', '240 kPa', 'holds', 'watches slip'],
  },
  {
    name: 'circuit, cold and whole',
    draw: (id) => <d.CircuitDrawing id={id} state={d.circuitExample} />,
    text: d.describeCircuit(d.circuitExample),
    mentions: ['600 kPa', '400 kPa', 'whole', 'holds', 'cold'],
  },
  {
    name: 'circuit, hot and split',
    draw: (id) => <d.CircuitDrawing id={id} state={circuitHot} />,
    text: d.describeCircuit(circuitHot),
    mentions: ['587 kPa', '191 kPa', '0.25 mm', '3.1 L/min', 'slips', 'hot'],
  },
  ...rangeStates.flatMap((s, i): Sample[] => [
    {
      name: `electronic ${String(i)} ${s.range}`,
      draw: (id) => (
        <d.ElectronicRangeDrawing id={id} state={s} layout={i % 2 === 0 ? 'tall' : 'wide'} />
      ),
      text: d.describeElectronic(s),
      mentions: ['selector', 'park pawl', ...(s.failSafe ? ['fail-safe'] : [])],
    },
    {
      name: `mechanical ${String(i)} ${s.range}`,
      draw: (id) => (
        <d.MechanicalRangeDrawing id={id} state={s} layout={i % 2 === 0 ? 'tall' : 'wide'} />
      ),
      text: d.describeMechanical(s),
      mentions: [
        'hand lever',
        s.misSet ? 'hard against the eye' : 'just past the eye',
        ...(s.failSafe ? ['cannot move the park pawl'] : []),
      ],
    },
  ]),
  {
    name: 'pump and regulator',
    draw: (id) => <d.PumpRegulatorDrawing id={id} state={d.pumpRegulatorExample} />,
    text: d.describePumpRegulator(d.pumpRegulatorExample),
    mentions: ['600 kPa', '9.5 L/min', '5 L/min', 'hot'],
  },
  {
    name: 'pump and regulator, nothing left over',
    draw: (id) => (
      <d.PumpRegulatorDrawing
        id={id}
        state={{ ...d.pumpRegulatorExample, flows: { pump: 9, toClutches: 9, leftOver: 0 } }}
      />
    ),
    text: d.describePumpRegulator({
      ...d.pumpRegulatorExample,
      flows: { pump: 9, toClutches: 9, leftOver: 0 },
    }),
    mentions: ['nothing is left over'],
  },
  ...[
    [0, 'drains'],
    [0.5, 'covers both ports'],
    [1, 'feeds the clutch'],
  ].map(([position, word]): Sample => ({
    name: `spool at ${String(position)}`,
    draw: (id) => (
      <d.SpoolValveDrawing id={id} state={{ ...d.spoolValveExample, position: Number(position) }} />
    ),
    text: d.describeSpoolValve({ ...d.spoolValveExample, position: Number(position) }),
    mentions: ['450 kPa', '380 kPa', '600 kPa', String(word)],
  })),
  {
    name: 'hydraulic path',
    draw: (id) => <d.HydraulicPathDrawing id={id} state={d.hydraulicPathExample} />,
    text: d.describeHydraulicPath(d.hydraulicPathExample),
    mentions: ['600 kPa', '400 kPa', 'not applied'],
  },
  {
    name: 'hydraulic path, two faults',
    draw: (id) => <d.HydraulicPathDrawing id={id} state={pathHot} />,
    text: d.describeHydraulicPath(pathHot),
    mentions: ['191 kPa', '398 kPa', 'slips', 'holds', 'transfer seal', 'stands open (high)'],
  },
  {
    name: 'seal, whole',
    draw: (id) => <d.TransferSealDrawing id={id} state={d.transferSealExample} />,
    text: d.describeTransferSeal(d.transferSealExample),
    mentions: ['whole', '400 kPa'],
  },
  {
    name: 'seal, split',
    draw: (id) => <d.TransferSealDrawing id={id} state={sealSplit} />,
    text: d.describeTransferSeal(sealSplit),
    mentions: ['0.28 mm', 'four hairs', '207 kPa', '3.3 L/min'],
  },
  {
    name: 'rings',
    draw: (id) => <d.SealingRingsDrawing id={id} state={d.sealingRingsExample} />,
    text: d.describeSealingRings(d.sealingRingsExample),
    mentions: ['400 kPa', '0.025 mm', '0.6 L/min'],
  },
  {
    name: 'clutch applied',
    draw: (id) => <d.ClutchPackDrawing id={id} state={d.clutchPackExample} />,
    text: d.describeClutchPack(d.clutchPackExample),
    mentions: ['400 kPa', '423 N·m', 'holds'],
  },
  {
    name: 'clutch released',
    draw: (id) => <d.ClutchPackDrawing id={id} state={d.clutchPackReleased} />,
    text: d.describeClutchPack(d.clutchPackReleased),
    mentions: ['released', 'clearance'],
  },
  {
    name: 'piston',
    draw: (id) => <d.PistonSpringDrawing id={id} state={d.pistonSpringExample} />,
    text: d.describePistonSpring(d.pistonSpringExample),
    mentions: ['400 kPa', '85 cm²', '3400 N', '900 N', '2500 N'],
  },
  ...(['cable', 'controller'] as const).flatMap((kind) =>
    [0, 0.4, 1].map((engage): Sample => ({
      name: `pawl ${kind} ${String(engage)}`,
      draw: (id) => <d.ParkPawlDrawing id={id} state={{ kind, engage }} />,
      text: d.describeParkPawl({ kind, engage }),
      mentions: [engage === 1 ? 'engaged' : engage === 0 ? 'released' : '40 %'],
    })),
  ),
  {
    name: 'complaint card',
    draw: (id) => <d.ComplaintCardDrawing id={id} />,
    text: d.describeComplaintCard(),
    mentions: ['Which ranges', 'drained back', 'electrics'],
  },
  {
    name: 'freeze frame',
    draw: (id) => <d.FreezeFrameDrawing id={id} />,
    text: d.describeFreezeFrame(),
    mentions: ['temperature', 'gear', 'turbine', 'commanded', 'pressure in the clutch'],
  },
  {
    name: 'log queue',
    draw: (id) => <d.LogQueueDrawing id={id} state={d.logQueueExample} />,
    text: d.describeLogQueue(d.logQueueExample),
    mentions: ['20 values', '10 items', 'comes 2 times', 'comes 10 times'],
  },
  {
    name: 'log patterns',
    draw: (id) => <d.LogPatternsDrawing id={id} />,
    text: d.describeLogPatterns(),
    mentions: ['holds nothing', 'slow fill', 'drags', 'holds too little', 'sensor', 'harness'],
  },
  {
    name: 'connector sleeve',
    draw: (id) => <d.ConnectorSleeveDrawing id={id} />,
    text: d.describeConnectorSleeve(),
    mentions: ['rings', 'plug', 'along the wires'],
  },
  {
    name: 'pan, level right',
    draw: (id) => <d.PanLevelDrawing id={id} state={d.panLevelExample} />,
    text: d.describePanLevel(d.panLevelExample),
    mentions: ['75 °C', 'between MIN and MAX', 'covered'],
  },
  {
    name: 'pan, low in a bend',
    draw: (id) => <d.PanLevelDrawing id={id} state={panLow} />,
    text: d.describePanLevel(panLow),
    mentions: ['between MIN and MAX', '20 °C', '12 %', 'not covered'],
  },
  {
    name: 'pan, overfull',
    draw: (id) => <d.PanLevelDrawing id={id} state={panHigh} />,
    text: d.describePanLevel(panHigh),
    mentions: ['over MAX', 'same fluid at 20 °C', 'whip air'],
  },
  {
    name: 'seals under a lens',
    draw: (id) => <d.SealStatesDrawing id={id} />,
    text: d.describeSealStates(),
    mentions: ['split', 'cut', 'swollen', 'set one', 'hard lip', 'aged'],
  },
  {
    name: 'two filters cut open',
    draw: (id) => <d.FilterBuildDrawing id={id} />,
    text: d.describeFilterBuild(),
    mentions: ['12 pleats', '6 pleats', 'half the media', 'seam', 'draw air'],
  },
  {
    name: 'gauge hook-up',
    draw: (id) => <d.GaugeHookupDrawing id={id} />,
    text: d.describeGaugeHookup(),
    mentions: ['engine off', 'slack', 'exhaust', 'outside the cabin'],
  },
  {
    name: 'what lies open together',
    draw: (id) => <d.OpenTogetherDrawing id={id} />,
    text: d.describeOpenTogether(),
    mentions: [
      'pan gasket',
      'bridge or sleeve',
      'connector sleeve',
      'if it slipped',
      'if it burnt',
    ],
  },
  {
    name: 'filter and pan cut open',
    draw: (id) => <d.FilterCutDrawing id={id} />,
    text: d.describeFilterCut(),
    mentions: ['blade', 'neck seal', 'magnet', 'needles'],
  },
  {
    name: 'bench, body off',
    draw: (id) => <d.BenchOpenDrawing id={id} />,
    text: d.describeBenchOpen(),
    mentions: ['valve body off', 'reverse', 'vacuum', 'end play'],
  },
  {
    name: 'air rig, good circuit',
    draw: (id) => <d.AirRigDrawing id={id} state={d.airRigExample} />,
    text: d.describeAirRig(d.airRigExample),
    mentions: ['275 kPa', '1.50 mm', '89 %', 'gone over', 'past the rings', 'bubbles'],
  },
  {
    name: 'air rig, cut piston seal',
    draw: (id) => <d.AirRigDrawing id={id} state={airBad} />,
    text: d.describeAirRig(airBad),
    mentions: ['25 %', 'holds the piston back', 'past the piston seal'],
  },
  {
    name: 'air rig, open port, dry',
    draw: (id) => <d.AirRigDrawing id={id} state={airPort} />,
    text: d.describeAirRig(airPort),
    mentions: ['9 %', 'open port'],
  },
  {
    name: 'air rig, split seal',
    draw: (id) => <d.AirRigDrawing id={id} state={airSeal} />,
    text: d.describeAirRig(airSeal),
    mentions: ['blank plate', '32 %', 'at the split'],
  },
  {
    name: 'air rig, valve shut',
    draw: (id) => <d.AirRigDrawing id={id} state={{ ...d.airRigExample, held: null, leaks: {} }} />,
    text: d.describeAirRig({ ...d.airRigExample, held: null, leaks: {} }),
    mentions: ['valve is shut'],
  },
  {
    name: 'ladder of reach',
    draw: (id) => <d.ReachLadderDrawing id={id} />,
    text: d.describeReachLadder(),
    mentions: ['seat', 'line opened', '35 to 180', 'not before level, codes, hot log and cable'],
  },
  {
    name: 'convincing record',
    draw: (id) => <d.ConvincingRecordDrawing id={id} />,
    text: d.describeConvincingRecord(),
    mentions: ['beside a scale', 'same axis', 'command beside pressure', 'Who and when'],
  },
  {
    name: 'by hours or by degrees',
    draw: (id) => <d.HoursOrDegreesDrawing id={id} />,
    text: d.describeHoursOrDegrees(),
    mentions: ['warm garage', 'drained back', 'hard lip', 'not measured'],
  },
  {
    name: 'a bridge pressed down by hand',
    draw: (id) => <d.BridgeSeatDrawing id={id} />,
    text: d.describeBridgeSeat(),
    mentions: ['nothing moves', 'daylight', 'rocks', 'valve body'],
  },
  {
    name: 'converter',
    draw: (id) => <d.ConverterDrawing id={id} state={d.converterExample} />,
    text: d.describeConverter(d.converterExample),
    mentions: ['700 rpm', '0 rpm', 'held'],
  },
  {
    name: 'controller states, standing alone',
    draw: (id) => <d.ControllerStatesDrawing id={id} state={d.controllerStatesExample} />,
    text: d.describeControllerStates(d.controllerStatesExample),
    mentions: [
      '100 rpm',
      '1.50 s',
      '80 rpm',
      '3 %',
      '0.30 s',
      '1.3 times',
      '3.1 mph',
      'seven states',
    ],
  },
  ...controllerStates.map((current): Sample => {
    const state = { ...d.controllerStatesExample, current };
    return {
      name: `controller in ${current}`,
      draw: (id) => <d.ControllerStatesDrawing id={id} state={state} />,
      text: d.describeControllerStates(state),
      mentions: ['Now:'],
    };
  }),
  {
    name: 'speed sensors',
    draw: (id) => <d.SpeedSensorsDrawing id={id} state={d.speedSensorsExample} />,
    text: d.describeSpeedSensors(d.speedSensorsExample),
    // 1500 - 4 x 300, by hand.
    mentions: ['1500 rpm', '300 rpm', '1200 rpm', '4.0 to 1'],
  },
];
