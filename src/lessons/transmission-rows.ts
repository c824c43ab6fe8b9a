import { words as signs } from '../car/signs/words.en.ts';
import { words } from '../car/words.en.ts';
import {
  FAULT_IDS,
  HARD_LIP_WARM,
  airHeld,
  applyFaults,
  coolant,
  driveHeat,
  faultKinds,
  faultSeverity,
  faultSpan,
  fluidClasses,
  illustrativeSettings,
  makeFluid,
  solveEngagement,
  timeToReach,
  training,
  trainingLump,
  viscosityIndex,
  warmedTo,
} from '../engine/index.ts';
import type { FaultId, FaultKind, Plant } from '../engine/index.ts';
import { degrees, number, power, type Row } from './row-values.ts';

export const fluidRows: readonly Row[] = Object.entries(fluidClasses).map(([name, spec]) => ({
  what: name,
  value: `${spec.kv40CSt} cSt at 40 °C, ${spec.kv100CSt} cSt at 100 °C, ${spec.density15} kg/m³ at 15 °C, viscosity index ${viscosityIndex(spec.kv40CSt, spec.kv100CSt).toFixed(0)}`,
}));

export interface FaultRow {
  readonly id: FaultId;
  readonly name: string;
  readonly changes: string;
  readonly range: string;
  readonly signature: string;
}

/** What one number cannot say of a fault. */
const besides: Readonly<Partial<Record<FaultId, string>>> = {
  hardLip: `; from there in a straight line to ${number(HARD_LIP_WARM.gap * 1e3)} mm at ${HARD_LIP_WARM.tempC} °C and above`,
  frictionWear: '; with it the stroke volume grows, at the worst to twice',
};

export const faultRows: readonly FaultRow[] = FAULT_IDS.map((id) => {
  const kind: FaultKind = faultKinds[id];
  const show = (value: number): string =>
    value !== 0 && value < 1e-4 ? power(value) : number(value);
  const unit =
    kind.unit === 'x' ? ' times' : kind.unit === '' ? '' : ` ${kind.unit.replace('um', 'µm')}`;
  return {
    id,
    name: words.faults[id],
    changes: `${kind.measure}${besides[id] ?? ''}${kind.oneCircuit ? ' (one circuit)' : ''}`,
    range: `${show(faultSpan(id).healthy)} to ${show(kind.worst)}${unit}`,
    signature: signs.signatures[id],
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
    value: `clutch command times ${settings.pressureRaise}, within the most that may be commanded; line by its own rule, ${training.commands.lineLead / 1e3} kPa above`,
  },
  { what: 'Second failed check', value: 'code stored, fail-safe' },
  {
    what: 'Park pawl may drop in below',
    value: `${number(settings.parkSpeed * 3.6)} km/h`,
  },
  { what: 'Controller cycle', value: `${number(settings.sample * 1e3)} ms` },
];

const fluid = makeFluid(training.fluid);
function stops(plant: Plant, tempC: number): string {
  const { stoppedAfter } = solveEngagement({
    plant,
    fluid,
    tempC,
    range: 'drive',
    rangeSelection: 'electronic',
  });
  return stoppedAfter === null ? 'never' : `${stoppedAfter.toFixed(2)} s`;
}

/** How long the turbine takes to stop after Drive is selected. */
export const frostRows: readonly Row[] = [100, 20, -10, -20].map((tempC) => ({
  what: degrees(tempC),
  value: stops(training, tempC),
}));

const held = (plant: Plant, target: 'forward' | 'transferSeal'): string =>
  `${(airHeld(plant, target) * 100).toFixed(0)} %`;
const withFault = (id: FaultId, severity: number): Plant =>
  applyFaults(training, { [id]: { severity } });

/** What stays of the supply in the bench air test. */
export const airRows: readonly Row[] = [
  { what: 'A circuit with sound rings', value: held(training, 'forward') },
  {
    what: 'Rings worn by a fifth of the worst',
    value: held(withFault('sealingRings', 0.2), 'forward'),
  },
  { what: 'A sound transfer seal', value: held(training, 'transferSeal') },
  {
    what: 'A crack of 0.25 mm in it',
    value: held(withFault('transferSeal', faultSeverity('transferSeal', 0.25)), 'transferSeal'),
  },
];

/** Warm-up from overnight cold. */
const START_C = 20;
const start = { fluidC: START_C, coolantC: START_C, ambientC: START_C };
const after = (heat: number, time: number): string =>
  degrees(Math.round(warmedTo(trainingLump, { ...start, heat, time }).fluidC));
const reaches = (heat: number, tempC: number): string => {
  const time = timeToReach(trainingLump, { ...start, heat }, tempC);
  return time === null ? 'never' : `${(time / 60).toFixed(1)} min`;
};
const long = 1e6;

export const warmUpRows: readonly Row[] = [
  {
    what: 'Heat capacity C of fluid and case',
    value: `${number(trainingLump.capacity / 1e3)} kJ/K`,
  },
  { what: 'Loss to the air UA', value: `${trainingLump.loss} W/K` },
  { what: 'Exchange with the coolant H', value: `${trainingLump.exchange} W/K` },
  {
    what: 'Coolant held at, and how fast it comes there',
    value: `${coolant.heldC} °C, ${coolant.time} s`,
  },
  {
    what: 'Heat P: idling, driving gently, stop and go pulling',
    value: `${number(driveHeat.idling / 1e3)}, ${number(driveHeat.gentle / 1e3)}, ${number(driveHeat.pulling / 1e3)} kW`,
  },
  { what: `Idling from ${degrees(START_C)} ends at`, value: after(driveHeat.idling, long) },
  { what: 'Driving gently, after 15 min', value: after(driveHeat.gentle, 900) },
  { what: `Driving gently, ${degrees(83)} after`, value: reaches(driveHeat.gentle, 83) },
  { what: 'Pulling ends at', value: after(driveHeat.pulling, long) },
];
