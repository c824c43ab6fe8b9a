import { EngineError } from '../error.ts';
import type { FluidClass, FluidSpec } from '../fluid/fluid.ts';
import type { CLUTCH_FIELDS, SHEET_FIELDS } from './sheet-fields.ts';
import type { Circuit, Gear } from './circuits.ts';

type Fields = typeof SHEET_FIELDS;
type Numbers<Section> = { readonly [key in keyof Section]: number };
/** A clutch as a sheet gives it. */
export type ClutchSheet = Numbers<typeof CLUTCH_FIELDS>;

/**
 * A transmission in the units that people read, as data: everything the model takes from a maker's sheet. The training
 * transmission is one value of it, a shop's own transmission another. Ranges: SHEET_FIELDS.
 */
export type TransmissionSheet = {
  readonly [
    key in keyof Fields as Fields[key] extends { readonly unit: string } ? key : never
  ]: number;
} & {
  readonly [
    key in keyof Fields as Fields[key] extends { readonly unit: string } ? never : key
  ]: Numbers<Fields[key]>;
} & {
  readonly name: string;
  readonly seal: { readonly circuits: readonly Circuit[] };
  /** Where the clutch of a circuit differs from `clutch`. */
  readonly clutches: { readonly [circuit in Circuit]?: Partial<ClutchSheet> };
  readonly fluid: FluidClass | FluidOnSheet;
  readonly applyChart: Readonly<Record<Gear, readonly Circuit[]>>;
};

/** A fluid as a sheet gives it. */
export interface FluidOnSheet {
  readonly kv40_cSt: number;
  readonly kv100_cSt: number;
  readonly density15_kgm3: number;
}

/**
 * The fluid of a sheet in the engine's own terms.
 *
 * @param fluid kv40_cSt and kv100_cSt [cSt], density15_kgm3 [kg/m3]
 * @returns kv40CSt and kv100CSt [cSt], density15 [kg/m3]
 * Range: as makeFluid.
 * Source: bookkeeping, no physics.
 * @example
 * fluidOnSheet({ kv40_cSt: 29.6, kv100_cSt: 6, density15_kgm3: 845 }).kv40CSt // 29.6
 */
export function fluidOnSheet(fluid: FluidOnSheet): FluidSpec {
  return {
    kv40CSt: fluid.kv40_cSt,
    kv100CSt: fluid.kv100_cSt,
    density15: fluid.density15_kgm3,
  };
}

/**
 * Refuses part of a sheet with a sentence and the path of the key.
 *
 * @param path of the key within the sheet, as pump.slip [-]
 * @param sentence what was wrong and what is allowed [-]
 * @returns never; it throws [-]
 * Range: none.
 * @throws EngineError always.
 * Source: bookkeeping, no physics.
 * @example
 * (() => { try { refuseSheet('pump.slip', 'No.'); } catch (error) { return error.argument; } })() // 'pump.slip'
 */
export function refuseSheet(path: string, sentence: string): never {
  throw new EngineError(path, sentence);
}
