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

/** A sheet that was refused: the first fault as its own argument and message, and every fault of it in order. */
export class SheetError extends EngineError {
  readonly faults: readonly EngineError[];

  constructor(faults: readonly [EngineError, ...EngineError[]]) {
    super(faults[0].argument, faults[0].message);
    this.faults = faults;
  }
}

/**
 * What is wrong with a sheet, gathered: whoever types one wants to hear all of it at once, not one fault a try.
 *
 * @returns add and attempt, which take faults in, and refuse, which throws if there are any [-]
 * Range: none.
 * @throws SheetError by refuse alone, with every fault.
 * Source: bookkeeping, no physics.
 * @example
 * (() => { const faults = sheetFaults(); faults.add('pump.slip', 'No.'); try { faults.refuse(); } catch (error) { return error.argument; } })() // 'pump.slip'
 */
export function sheetFaults() {
  const faults: EngineError[] = [];
  return {
    /** One fault: the path of its key, as pump.slip, and the sentence. */
    add(path: string, sentence: string): void {
      faults.push(new EngineError(path, sentence));
    },
    /** What a check of the engine gives; where it refuses, that is one more fault at this path and there is nothing. */
    attempt<T>(path: string, check: () => T, sentence = (said: string) => said): T | undefined {
      try {
        return check();
      } catch (thrown) {
        if (!(thrown instanceof EngineError)) throw thrown;
        faults.push(new EngineError(path, sentence(thrown.message)));
        return undefined;
      }
    },
    refuse(): void {
      const [first, ...others] = faults;
      if (first !== undefined) throw new SheetError([first, ...others]);
    },
  };
}

/** The gathering of what is wrong with one sheet. */
export type SheetFaults = ReturnType<typeof sheetFaults>;
