import {
  drivetrain,
  faultKinds,
  faultSpan,
  fluidClasses,
  gearbox,
  illustrativeSettings,
  testPoints,
  trainingLump,
  viscosityIndex,
  driveHeat,
  FAULT_IDS,
  type FaultId,
  type FaultKind,
} from '../engine/index.ts';

/** A row of a table on the model page: the value is read from the engine, never typed. */
export interface Row {
  readonly what: string;
  readonly value: string;
}

const number = (value: number): string => String(Number(value.toPrecision(6)));
const mm = (metres: number): string => `${number(metres * 1e3)} mm`;
const um = (metres: number): string => `${number(metres * 1e6)} µm`;
const kPa = (pascals: number): string => `${number(pascals / 1e3)} kPa`;
/** 3e-8 as 3 × 10⁻⁸. */
const power = (value: number): string => {
  const [digits = '', exponent = ''] = value.toExponential().split('e');
  const raised = Array.from(exponent.replace('+', ''))
    .map((sign) => (sign === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)] ?? '')))
    .join('');
  return `${digits} × 10${raised}`;
};

const { pump, lineClearances, leaks } = gearbox;
const clutch = gearbox.clutches.forward;
const feedDiameter = 2 * Math.sqrt(gearbox.feed.area / Math.PI);

export const gearboxRows: readonly Row[] = [
  {
    what: 'Pump displacement, at engine speed',
    value: `${number(pump.displacement * 1e6)} cm³/rev`,
  },
  { what: 'Pump slip coefficient', value: power(pump.slip) },
  { what: 'Filter and pick-up resistance', value: `${power(pump.suctionResistance)} per m³` },
  { what: 'Pressure to spare at the inlet', value: kPa(pump.suctionLimit) },
  {
    what: 'Line clearances, as one gap: width, height, length',
    value: `${mm(lineClearances.width)}, ${um(lineClearances.height)}, ${mm(lineClearances.length)}`,
  },
  { what: 'Feed hole', value: mm(feedDiameter) },
  { what: 'Feed valve band', value: kPa(gearbox.feed.band) },
  {
    what: 'Sealing rings of each circuit: width, height, length',
    value: `${mm(leaks.forward.rings.width)}, ${um(leaks.forward.rings.height)}, ${mm(leaks.forward.rings.length)}`,
  },
  {
    what: 'Transfer seal, where it splits: width, length',
    value: `${mm(leaks.forward.transferSeal.width)}, ${mm(leaks.forward.transferSeal.length)}`,
  },
  { what: 'Clutch piston area', value: `${number(clutch.area * 1e4)} cm²` },
  { what: 'Clutch return spring', value: `${number(clutch.springForce)} N` },
  { what: 'Clutch stroke volume', value: `${number(clutch.strokeVolume * 1e6)} cm³` },
  { what: 'Give of a filled clutch', value: `${power(clutch.compliance)} m³/Pa` },
  { what: 'Friction faces', value: number(clutch.faces) },
  { what: 'Mean friction radius', value: mm(clutch.meanRadius) },
  { what: 'Friction coefficient', value: number(clutch.friction) },
  { what: 'Converter capacity K', value: `${drivetrain.capacity} rpm/√(N·m)` },
  { what: 'Converter torque ratio at stall', value: number(drivetrain.stallTorqueRatio) },
  {
    what: 'Inertia of engine and of turbine',
    value: `${drivetrain.engineInertia} and ${drivetrain.turbineInertia} kg·m²`,
  },
  { what: 'Idle speed', value: `${drivetrain.idleRpm} rpm` },
  {
    what: 'Ratios: first, reverse, high (third)',
    value: `${drivetrain.ratios.forward}, ${drivetrain.ratios.reverse}, ${drivetrain.ratios.high}`,
  },
  {
    what: 'Final drive, wheel radius, mass, drag',
    value: `${drivetrain.finalDrive}, ${drivetrain.wheelRadius} m, ${drivetrain.mass} kg, ${drivetrain.drag} N`,
  },
  {
    what: 'Commands at idle: line, clutch',
    value: `${kPa(testPoints.idle.line)}, ${kPa(testPoints.idle.clutch)}`,
  },
  {
    what: 'Commands at 1500 rpm under load: line, clutch',
    value: `${kPa(testPoints.load.line)}, ${kPa(testPoints.load.clutch)}`,
  },
  {
    what: 'Warm-up: heat capacity, loss to the air',
    value: `${number(trainingLump.capacity / 1e3)} kJ/K, ${trainingLump.loss} W/K`,
  },
  {
    what: 'Heat into the fluid: idling, driving gently, stop and go pulling',
    value: `${number(driveHeat.idling / 1e3)}, ${number(driveHeat.gentle / 1e3)}, ${number(driveHeat.pulling / 1e3)} kW`,
  },
];

export const fluidRows: readonly Row[] = Object.entries(fluidClasses).map(([name, spec]) => ({
  what: name,
  value: `${spec.kv40CSt} cSt at 40 °C, ${spec.kv100CSt} cSt at 100 °C, ${spec.density15} kg/m³ at 15 °C, viscosity index ${viscosityIndex(spec.kv40CSt, spec.kv100CSt).toFixed(0)}`,
}));

/** What the trade calls each fault, and what to look for; common practice, no source. */
const faultWords: Readonly<Record<FaultId, readonly [name: string, signature: string]>> = {
  transferSeal: ['Split transfer seal', 'Thin: hot only. Drive and Reverse, not high gear.'],
  sealingRings: ['Worn sealing rings', 'Hot. One range only.'],
  hardLip: ['Hardened piston lip', 'Late cold, right when warm. One range only.'],
  clutchControl: [
    'Clutch regulating valve or solenoid fades hot',
    'Hot. One range only. The scan tool shows the command as asked; the air test is good.',
  ],
  pistonSeal: ['Cut piston seal', 'Hot. One range only. The air test fails at the case.'],
  pumpWear: ['Worn pump', 'Line low at hot idle, better with speed. All ranges.'],
  regulatorBore: ['Worn regulator bore', 'Line low at hot idle. All ranges.'],
  pressureControl: [
    'Pressure control off',
    'Line low hot and cold alike, by the same share at any speed.',
  ],
  filter: ['Restricted filter', 'Cold and at high speed, with noise.'],
  lowFluid: [
    'Low fluid',
    'Line low, worse when more is asked. In this model only hot, where the leaks ask most.',
  ],
  thinFluid: ['Worn-out or wrong fluid', 'Everything leaks a little more, hot.'],
  feedRestriction: [
    'Restricted feed, or lever or cable out of adjustment',
    'Slow to fill at any temperature; low hot, where even the rings outrun the feed.',
  ],
  openPort: ['Plug or check ball missing', 'Hot and cold alike. One range.'],
  frictionWear: ['Worn friction', 'Pressures normal, still slips.'],
  turbineSensor: ['False turbine sensor', 'A code without slip.'],
};

export interface FaultRow {
  readonly id: FaultId;
  readonly name: string;
  readonly changes: string;
  readonly range: string;
  readonly signature: string;
}

export const faultRows: readonly FaultRow[] = FAULT_IDS.map((id) => {
  const kind: FaultKind = faultKinds[id];
  const [name, signature] = faultWords[id];
  const show = (value: number): string =>
    value !== 0 && value < 1e-4 ? power(value) : number(value);
  const unit =
    kind.unit === 'x' ? ' times' : kind.unit === '' ? '' : ` ${kind.unit.replace('um', 'µm')}`;
  return {
    id,
    name,
    changes: kind.oneCircuit ? `${kind.measure} (one circuit)` : kind.measure,
    range: `${show(faultSpan(id).healthy)} to ${show(kind.worst)}${unit}`,
    signature,
  };
});

const settings = illustrativeSettings;
export const controllerRows: readonly Row[] = [
  {
    what: 'Engagement check',
    value: `slip over ${settings.engagementSlipRpm} rpm, ${settings.engagementTime} s after selection`,
  },
  {
    what: 'Ratio check',
    value: `slip over ${settings.ratioSlipRpm} rpm or ${number(settings.ratioSlipShare * 100)} % of turbine speed, whichever is more, for ${settings.ratioTime} s`,
  },
  {
    what: 'First failed check',
    value: `clutch pressure times ${settings.pressureRaise}, and line with it, by the same lead as before`,
  },
  { what: 'Second failed check', value: 'code stored, fail-safe' },
  {
    what: 'Park pawl may drop in below',
    value: `${number(settings.parkSpeed * 3.6)} km/h`,
  },
  { what: 'Controller cycle', value: `${number(settings.sample * 1e3)} ms` },
];
