import { words as signs } from '../car/signs/words.en.ts';
import { words } from '../car/words.en.ts';
import {
  FAULT_IDS,
  HARD_LIP_WARM,
  coolant,
  driveHeat,
  faultKinds,
  faultSpan,
  fluidClasses,
  illustrativeSettings,
  training,
  trainingLump,
  viscosityIndex,
} from '../engine/index.ts';
import type { FaultId, FaultKind } from '../engine/index.ts';
import { number, shownNumber, type Row } from './row-values.ts';

export const fluidRows: readonly Row[] = Object.entries(fluidClasses).map(([name, spec]) => ({
  what: name,
  value: `{kinematicViscosity ${spec.kv40CSt}} at {temperature 40}, {kinematicViscosity ${spec.kv100CSt}} at {temperature 100}, {density ${spec.density15}} at {temperature 15}, viscosity index ${viscosityIndex(spec.kv40CSt, spec.kv100CSt).toFixed(0)}`,
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
  hardLip: `; from there in a straight line to {length ${number(HARD_LIP_WARM.gap * 1e3)}} at {temperature ${HARD_LIP_WARM.tempC}} and above`,
  frictionWear: '; with it the stroke volume grows, at the worst to twice',
};

/** The engine's sentences are metric; here a temperature in one reads in both systems. */
const inBoth = (measure: string): string => measure.replace(/(-?\d+) °C/g, '{temperature $1}');

/** What a reader of either system knows in place of the engine's unit, and by how much it goes into that. */
const shownAs: Readonly<Record<string, readonly [quantity: string, scale: number]>> = {
  mm: ['length', 1],
  um: ['length', 1e-3],
  L: ['fluidVolume', 1],
  rpm: ['speed', 1],
};

/** From sound to worst. */
function spanOf(id: FaultId, { unit, worst }: FaultKind): string {
  const { healthy } = faultSpan(id);
  const as = shownAs[unit];
  if (as === undefined) {
    return `${shownNumber(healthy)} to ${shownNumber(worst)}${unit === 'x' ? ' times' : ''}`;
  }
  const [quantity, scale] = as;
  const amount = (value: number): string => `{${quantity} ${number(value * scale)}}`;
  return `${amount(healthy)} to ${amount(worst)}`;
}

export const faultRows: readonly FaultRow[] = FAULT_IDS.map((id) => {
  const kind: FaultKind = faultKinds[id];
  return {
    id,
    name: words.faults[id],
    changes: `${inBoth(kind.measure)}${besides[id] ?? ''}${kind.oneCircuit ? ' (one circuit)' : ''}`,
    range: spanOf(id, kind),
    signature: signs.signatures[id],
  };
});

/** The values below are written as in a question: {= id} for a number of the course, {quantity value} for a given. */
const { lineLead } = training.commands;
export const controllerRows: readonly Row[] = [
  {
    what: 'Engagement check',
    value: 'slip over {= slip-check-limit}, {= check-time} after selection',
  },
  {
    what: 'Ratio check',
    value:
      'slip over {= slip-limit-floor} or {= slip-limit-share} of turbine speed, whichever is more, for {= slip-limit-time}',
  },
  {
    what: 'First failed check',
    value: `clutch command times ${illustrativeSettings.pressureRaise}, within the most that may be commanded; line by its own rule, {pressure ${lineLead / 1e3}} above`,
  },
  { what: 'Second failed check', value: 'code stored, fail-safe' },
  { what: 'Park pawl may drop in below', value: '{= range-park-below}' },
  { what: 'Controller cycle', value: '{= slip-cycle}' },
];

/** How long the turbine takes to stop after Drive is selected. */
export const frostRows: readonly Row[] = [
  { what: '{temperature 100}', value: '{= stop-healthy-100}' },
  { what: '{temperature 20}', value: '{= stop-healthy-20}' },
  { what: '{temperature -10}', value: '{= stop-healthy-minus-10}' },
  { what: '{temperature -20}', value: '{= stop-healthy-minus-20}' },
];

/** What stays of the supply in the bench air test. */
export const airRows: readonly Row[] = [
  { what: 'A circuit with sound rings', value: '{= air-sound}' },
  { what: 'Rings worn by a fifth of the worst', value: '{= air-rings-fifth}' },
  { what: 'A sound transfer seal', value: '{= air-seal-sound}' },
  { what: 'A crack of {= crack-default} in it', value: '{= air-seal-split}' },
];

/** Warm-up from overnight cold. */
export const warmUpRows: readonly Row[] = [
  {
    what: 'Heat capacity C of fluid and case',
    value: `${number(trainingLump.capacity / 1e3)} kJ/K`,
  },
  { what: 'Loss to the air UA', value: `${trainingLump.loss} W/K` },
  { what: 'Exchange with the coolant H', value: `${trainingLump.exchange} W/K` },
  {
    what: 'Coolant held at, and how fast it comes there',
    value: `{temperature ${coolant.heldC}}, ${coolant.time} s`,
  },
  {
    what: 'Heat P: idling, driving gently, stop and go pulling',
    value: `{power ${driveHeat.idling / 1e3}}, {power ${driveHeat.gentle / 1e3}}, {power ${driveHeat.pulling / 1e3}}`,
  },
  { what: 'Idling from {temperature 20} ends at', value: '{= warm-up-idling-end}' },
  { what: 'Driving gently, after {minutes 15}', value: '{= warm-up-gentle-15}' },
  { what: 'Driving gently, {temperature 83} after', value: '{= warm-up-gentle-to-83}' },
  { what: 'Pulling ends at', value: '{= warm-up-pulling-end}' },
];
