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
import { printer } from '../quantity/print.ts';
import {
  area,
  converterCapacity,
  density,
  dimension,
  fluidVolume,
  force,
  friction,
  inertia,
  mass,
  milliseconds,
  ratio,
  volume,
} from '../quantity/part-quantities.ts';
import {
  count,
  kinematicViscosity,
  length,
  percent,
  power,
  pressure,
  roadSpeed,
  seconds,
  speed,
  temperature,
} from '../quantity/quantities.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { UnitText } from '../quantity/unit-system.ts';

/** A row of a table on the model page: the value is read from the engine, never typed. */
export interface Row {
  readonly what: string;
  readonly value: UnitText;
}

type Print = ReturnType<typeof printer>;
/** A value out of several, each printed in the reader's units. */
const told =
  (words: (print: Print) => string): UnitText =>
  (system) =>
    words(printer(system));
const amount = (value: number, quantity: Quantity): UnitText =>
  told((print) => print(value, quantity));
/** Coefficients of the model, in the units of its formulas: they have no reading on a gauge. */
const number = (value: number): string => String(Number(value.toPrecision(6)));
/** 3e-8 as 3 × 10⁻⁸. */
const tenPower = (value: number): string => {
  const [digits = '', exponent = ''] = value.toExponential().split('e');
  const raised = Array.from(exponent.replace('+', ''))
    .map((sign) => (sign === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)] ?? '')))
    .join('');
  return `${digits} × 10${raised}`;
};

const { pump, lineClearances, leaks } = gearbox;
const clutch = gearbox.clutches.forward;
const feedDiameter = 2 * Math.sqrt(gearbox.feed.area / Math.PI);

/** Width, height and length of a gap; its height alone is a width that a feeler gauge measures. */
const gap = (slot: { readonly width: number; readonly height: number; readonly length: number }) =>
  told(
    (print) =>
      `${print(slot.width * 1e3, dimension)}, ${print(slot.height * 1e3, length)}, ${print(slot.length * 1e3, dimension)}`,
  );
const commands = (at: keyof typeof testPoints): UnitText =>
  told(
    (print) =>
      `${print(testPoints[at].line / 1e3, pressure)}, ${print(testPoints[at].clutch / 1e3, pressure)}`,
  );

export const gearboxRows: readonly Row[] = [
  {
    what: 'Pump displacement in one turn, at engine speed',
    value: amount(pump.displacement * 1e6, volume),
  },
  { what: 'Pump slip coefficient', value: tenPower(pump.slip) },
  { what: 'Filter and pick-up resistance', value: `${tenPower(pump.suctionResistance)} per m³` },
  { what: 'Pressure to spare at the inlet', value: amount(pump.suctionLimit / 1e3, pressure) },
  {
    what: 'Line clearances, as one gap: width, height, length',
    value: gap(lineClearances),
  },
  { what: 'Feed hole', value: amount(feedDiameter * 1e3, length) },
  { what: 'Feed valve band', value: amount(gearbox.feed.band / 1e3, pressure) },
  {
    what: 'Sealing rings of each circuit: width, height, length',
    value: gap(leaks.forward.rings),
  },
  {
    what: 'Transfer seal, where it splits: width, length',
    value: told(
      (print) =>
        `${print(leaks.forward.transferSeal.width * 1e3, dimension)}, ${print(leaks.forward.transferSeal.length * 1e3, dimension)}`,
    ),
  },
  { what: 'Clutch piston area', value: amount(clutch.area * 1e4, area) },
  { what: 'Clutch return spring', value: amount(clutch.springForce, force) },
  { what: 'Clutch stroke volume', value: amount(clutch.strokeVolume * 1e6, volume) },
  { what: 'Give of a filled clutch', value: `${tenPower(clutch.compliance)} m³/Pa` },
  { what: 'Friction faces', value: number(clutch.faces) },
  { what: 'Mean friction radius', value: amount(clutch.meanRadius * 1e3, dimension) },
  { what: 'Friction coefficient', value: amount(clutch.friction, friction) },
  { what: 'Converter capacity K', value: amount(drivetrain.capacity, converterCapacity) },
  { what: 'Converter torque ratio at stall', value: amount(drivetrain.stallTorqueRatio, ratio) },
  {
    what: 'Inertia of engine and of turbine',
    value: told(
      (print) =>
        `${print(drivetrain.engineInertia, inertia)} and ${print(drivetrain.turbineInertia, inertia)}`,
    ),
  },
  { what: 'Idle speed', value: amount(drivetrain.idleRpm, speed) },
  {
    what: 'Ratios: first, reverse, high (third)',
    value: told((print) =>
      [drivetrain.ratios.forward, drivetrain.ratios.reverse, drivetrain.ratios.high]
        .map((one) => print(one, ratio))
        .join(', '),
    ),
  },
  {
    what: 'Final drive, wheel radius, mass, drag',
    value: told(
      (print) =>
        `${print(drivetrain.finalDrive, ratio)}, ${print(drivetrain.wheelRadius * 1e3, dimension)}, ${print(drivetrain.mass, mass)}, ${print(drivetrain.drag, force)}`,
    ),
  },
  {
    what: 'Commands at idle: line, clutch',
    value: commands('idle'),
  },
  {
    what: 'Commands at 1500 rpm under load: line, clutch',
    value: commands('load'),
  },
  {
    what: 'Warm-up: heat capacity, loss to the air',
    value: `${number(trainingLump.capacity / 1e3)} kJ/K, ${trainingLump.loss} W/K`,
  },
  {
    what: 'Heat into the fluid: idling, driving gently, stop and go pulling',
    value: told((print) =>
      [driveHeat.idling, driveHeat.gentle, driveHeat.pulling]
        .map((watts) => print(watts / 1e3, power))
        .join(', '),
    ),
  },
];

export const fluidRows: readonly Row[] = Object.entries(fluidClasses).map(([name, spec]) => ({
  what: name,
  value: told((print) =>
    [
      `${print(spec.kv40CSt, kinematicViscosity)} at ${print(40, temperature)}`,
      `${print(spec.kv100CSt, kinematicViscosity)} at ${print(100, temperature)}`,
      `${print(spec.density15, density)} at ${print(15, temperature)}`,
      `viscosity index ${print(viscosityIndex(spec.kv40CSt, spec.kv100CSt), count)}`,
    ].join(', '),
  ),
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
  readonly range: UnitText;
  readonly signature: string;
}

/** An amount of a fault, by the unit its catalogue gives it in. */
function inUnitOf({ unit }: FaultKind, value: number, print: Print): string {
  switch (unit) {
    case 'mm':
      return print(value, length);
    case 'um':
      return print(value / 1e3, length);
    case 'L':
      return print(value, fluidVolume);
    case 'rpm':
      return print(value, speed);
    case 'x':
      return `${number(value)} times`;
    default:
      return value !== 0 && value < 1e-4 ? tenPower(value) : number(value);
  }
}

export const faultRows: readonly FaultRow[] = FAULT_IDS.map((id) => {
  const kind: FaultKind = faultKinds[id];
  const [name, signature] = faultWords[id];
  const { healthy } = faultSpan(id);
  return {
    id,
    name,
    changes: kind.oneCircuit ? `${kind.measure} (one circuit)` : kind.measure,
    range: told(
      (print) => `${inUnitOf(kind, healthy, print)} to ${inUnitOf(kind, kind.worst, print)}`,
    ),
    signature,
  };
});

const settings = illustrativeSettings;
export const controllerRows: readonly Row[] = [
  {
    what: 'Engagement check',
    value: told(
      (print) =>
        `slip over ${print(settings.engagementSlipRpm, speed)}, ${print(settings.engagementTime, seconds)} after selection`,
    ),
  },
  {
    what: 'Ratio check',
    value: told(
      (print) =>
        `slip over ${print(settings.ratioSlipRpm, speed)} or ${print(settings.ratioSlipShare * 100, percent)} of turbine speed, whichever is more, for ${print(settings.ratioTime, seconds)}`,
    ),
  },
  {
    what: 'First failed check',
    value: `clutch pressure times ${settings.pressureRaise}, and line with it, by the same lead as before`,
  },
  { what: 'Second failed check', value: 'code stored, fail-safe' },
  {
    what: 'Park pawl may drop in below',
    value: amount(settings.parkSpeed * 3.6, roadSpeed),
  },
  { what: 'Controller cycle', value: amount(settings.sample * 1e3, milliseconds) },
];
