import { words as signs } from '../../car/signs/words.en.ts';
import { words as car } from '../../car/words.en.ts';
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
} from '../../engine/index.ts';
import type { FaultId, FaultKind } from '../../engine/index.ts';
import { number, shownNumber, type Row } from './row-values.ts';
import { words } from './words.en.ts';

export const fluidRows: readonly Row[] = Object.entries(fluidClasses).map(([name, spec]) => ({
  what: name,
  value: words.fluidClass({
    thin40: `{kinematicViscosity ${spec.kv40CSt}}`,
    thin100: `{kinematicViscosity ${spec.kv100CSt}}`,
    density: `{density ${spec.density15}}`,
    index: viscosityIndex(spec.kv40CSt, spec.kv100CSt).toFixed(0),
  }),
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
  hardLip: words.hardLipWarms({
    gap: `{length ${number(HARD_LIP_WARM.gap * 1e3)}}`,
    temp: `{temperature ${HARD_LIP_WARM.tempC}}`,
  }),
  frictionWear: words.strokeGrows,
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
    const range = { min: shownNumber(healthy), max: shownNumber(worst) };
    return unit === 'x' ? words.rangeTimes(range) : words.range(range);
  }
  const [quantity, scale] = as;
  const amount = (value: number): string => `{${quantity} ${number(value * scale)}}`;
  return words.range({ min: amount(healthy), max: amount(worst) });
}

export const faultRows: readonly FaultRow[] = FAULT_IDS.map((id) => {
  const kind: FaultKind = faultKinds[id];
  return {
    id,
    name: car.faults[id],
    changes: `${inBoth(kind.measure)}${besides[id] ?? ''}${kind.oneCircuit ? ` ${words.oneCircuit}` : ''}`,
    range: spanOf(id, kind),
    signature: signs.signatures[id],
  };
});

/** The values below are written as in a question: {= id} for a number of the course, {quantity value} for a given. */
const { lineLead } = training.commands;
export const controllerRows: readonly Row[] = [
  {
    what: words.engagementCheck,
    value: words.engagementCheckRule,
  },
  {
    what: words.ratioCheck,
    value: words.ratioCheckRule,
  },
  {
    what: words.firstFailed,
    value: words.firstFailedRule({
      times: String(illustrativeSettings.pressureRaise),
      lead: `{pressure ${lineLead / 1e3}}`,
    }),
  },
  { what: words.secondFailed, value: words.secondFailedRule },
  { what: words.parkBelow, value: '{= range-park-below}' },
  { what: words.cycle, value: '{= slip-cycle}' },
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
  { what: words.airRings, value: '{= air-sound}' },
  { what: words.airRingsWorn, value: '{= air-rings-fifth}' },
  { what: words.airSeal, value: '{= air-seal-sound}' },
  { what: words.airSealSplit, value: '{= air-seal-split}' },
];

/** Warm-up from overnight cold. */
export const warmUpRows: readonly Row[] = [
  {
    what: words.heatCapacity,
    value: `${number(trainingLump.capacity / 1e3)} kJ/K`,
  },
  { what: words.lossToAir, value: `${trainingLump.loss} W/K` },
  { what: words.exchange, value: `${trainingLump.exchange} W/K` },
  {
    what: words.coolant,
    value: `{temperature ${coolant.heldC}}, ${coolant.time} s`,
  },
  {
    what: words.heat,
    value: `{power ${driveHeat.idling / 1e3}}, {power ${driveHeat.gentle / 1e3}}, {power ${driveHeat.pulling / 1e3}}`,
  },
  { what: words.idlingEnds, value: '{= warm-up-idling-end}' },
  { what: words.gentleAfter, value: '{= warm-up-gentle-15}' },
  { what: words.gentleTo, value: '{= warm-up-gentle-to-83}' },
  { what: words.pullingEnds, value: '{= warm-up-pulling-end}' },
];
