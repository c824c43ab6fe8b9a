import {
  SheetError,
  applyFaults,
  fluidClasses,
  makeFluid,
  parseSheet,
  plantFromSheet,
  training,
} from '../engine/index.ts';
import type { FaultSet, Fluid, Plant } from '../engine/index.ts';
import { sheetRefusal } from './engine-refusal.ts';
import type { FaultsGiven, FluidGiven } from './request-schema.ts';
import { asWritten } from './written-numbers.ts';

export function fluidOf(given: FluidGiven): Fluid {
  if (typeof given === 'string') return makeFluid(fluidClasses[given]);
  return makeFluid({
    kv40CSt: given.kv40_cSt,
    kv100CSt: given.kv100_cSt,
    density15: given.density15_kgm3,
  });
}

/** A number too large for a double is no text either: the engine's parser is to see that it is out of range. */
function withoutMarks(given: unknown): unknown {
  if (typeof given === 'string') return asWritten(given) === undefined ? given : Infinity;
  if (Array.isArray(given)) return given.map(withoutMarks);
  if (typeof given !== 'object' || given === null) return given;
  return Object.fromEntries(
    Object.entries(given).map(([key, value]) => [key, withoutMarks(value)]),
  );
}

/** A sheet that is not one, with the sentence already under its path. */
export class SheetRefused extends Error {
  readonly path: string;
  constructor(error: string, path: string) {
    super(error);
    this.path = path;
  }
}

/** A sheet, whole or in part, as a transmission. */
export function transmissionOf(given: unknown): Plant {
  try {
    return plantFromSheet(parseSheet(withoutMarks(given)));
  } catch (thrown) {
    if (!(thrown instanceof SheetError)) throw thrown;
    const { error, path } = sheetRefusal(thrown, given);
    throw new SheetRefused(error, path);
  }
}

/** What a request asks about: a transmission with its faults, and what it is filled with. */
export function carOf(given: {
  readonly transmission?: unknown;
  readonly faults?: FaultsGiven | undefined;
  readonly fluid?: FluidGiven | undefined;
}): { readonly plant: Plant; readonly fluid: Fluid } {
  const sound = given.transmission === undefined ? training : transmissionOf(given.transmission);
  const settings = Object.entries(given.faults ?? {}).map(([id, fault]) => [
    id,
    typeof fault === 'number' ? { severity: fault } : fault,
  ]);
  return {
    plant: applyFaults(sound, Object.fromEntries(settings) as FaultSet),
    fluid: given.fluid === undefined ? makeFluid(sound.fluid) : fluidOf(given.fluid),
  };
}
