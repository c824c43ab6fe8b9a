/** What was typed of a transmission, as a whole sheet for the engine, with everything that is wrong with it. */
import {
  CIRCUITS,
  fluidClasses,
  GEARS,
  parseSheet,
  SheetError,
  trainingSheet,
  type Circuit,
  type Gear,
  type TransmissionSheet,
} from '../engine/index.ts';
import { parseAmount } from '../quantity/parse-amount.ts';
import type { OwnSheet, TypedField } from '../storage/sheets/own-sheet.ts';
import { ALL_FIELDS, FIELDS, onSheet, type SheetField } from './fields.ts';

/** Where circuits are ticked. */
export const CHART_PATHS = GEARS.map((gear) => `applyChart.${gear}`);
export const SEAL_PATH = 'seal.circuits';
export const FLUID_PATH = 'fluid';
/** In place of a class of fluid: its own numbers. */
export const OWN_FLUID = 'own';

/** `typed`: no such number. `circuits`: none is ticked, or a name that is none. `check`: the engine refuses it beside others. */
export type Trouble =
  | { readonly kind: 'typed'; readonly field: SheetField; readonly typed: TypedField }
  | { readonly kind: 'circuits' | 'fluid' }
  | { readonly kind: 'check'; readonly path: string; readonly message: string };

export interface SheetRead {
  /** Null while something is wrong. */
  readonly whole: TransmissionSheet | null;
  /** By the path of the field that it stands at. */
  readonly troubles: ReadonlyMap<string, Trouble>;
  /** How many of its numbers were typed and can be read, how many are assumed, and how many there are; the rest is to be mended. */
  readonly yours: number;
  readonly assumed: number;
  readonly of: number;
}

/** What stands at a path; undefined where it is assumed. */
export const typedAt = ({ fields }: OwnSheet, path: string): TypedField | undefined => {
  const kept = fields[path]?.value;
  return kept === undefined || kept === null || kept.text.trim() === '' ? undefined : kept;
};

export const circuitsIn = (text: string): readonly Circuit[] => {
  const names = text.split(/\s+/);
  return CIRCUITS.filter((circuit) => names.includes(circuit));
};
export const textOfCircuits = (circuits: readonly Circuit[]): string =>
  // Nothing ticked is an answer too, if a wrong one; an empty text would say that it is assumed.
  circuits.length === 0 ? '-' : circuits.join(' ');

/** What is ticked at a path, assumed or not. */
export function circuitsAt(sheet: OwnSheet, path: string): readonly Circuit[] {
  const typed = typedAt(sheet, path);
  if (typed !== undefined) return circuitsIn(typed.text);
  if (path === SEAL_PATH) return trainingSheet.seal.circuits;
  return trainingSheet.applyChart[path.slice('applyChart.'.length) as Gear];
}

export const fluidOf = (sheet: OwnSheet): string =>
  typedAt(sheet, FLUID_PATH)?.text ?? (trainingSheet.fluid as string);

/** The numbers that count: those of a fluid of its own only where that is chosen. */
const counted = (sheet: OwnSheet): readonly SheetField[] =>
  fluidOf(sheet) === OWN_FLUID
    ? ALL_FIELDS
    : ALL_FIELDS.filter((field) => !FIELDS.fluid.includes(field));

function put(into: Record<string, unknown>, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let inner = into;
  for (const key of keys) inner = (inner[key] ??= {}) as Record<string, unknown>;
  inner[last] = value;
}

/** Where the engine names a part that is typed under another path. */
const shownAt = (path: string): string => {
  if (path === 'clutch.spring_N') return 'clutches.forward.spring_N';
  const [, circuit] = /^clutches\.(\w+)$/.exec(path) ?? [];
  return circuit === undefined ? path : `clutches.${circuit}.spring_N`;
};

export function readSheet(sheet: OwnSheet): SheetRead {
  const given: Record<string, unknown> = { name: sheet.name.value };
  const troubles = new Map<string, Trouble>();
  let yours = 0;
  const fields = counted(sheet);
  const lists = [...CHART_PATHS, SEAL_PATH];

  for (const field of fields) {
    const typed = typedAt(sheet, field.path);
    if (typed === undefined) continue;
    const read = parseAmount(typed.text, field.quantity, typed.units, field.range);
    if (read.ok) {
      put(given, field.path, onSheet(field, read.value));
      yours += 1;
    } else troubles.set(field.path, { kind: 'typed', field, typed });
  }
  for (const path of lists) {
    const typed = typedAt(sheet, path);
    if (typed === undefined) continue;
    const circuits = circuitsIn(typed.text);
    if (circuits.length > 0) {
      put(given, path, circuits);
      yours += 1;
    } else troubles.set(path, { kind: 'circuits' });
  }
  const fluid = fluidOf(sheet);
  if (fluid === OWN_FLUID) {
    const own = FIELDS.fluid.map((field) => [field.path, onSheet(field, field.assumed)] as const);
    const numbers = (given['fluid'] ?? {}) as Record<string, unknown>;
    for (const [path, assumed] of own) {
      const key = path.slice('fluid.'.length);
      numbers[key] ??= assumed;
    }
    given['fluid'] = numbers;
  } else if (Object.hasOwn(fluidClasses, fluid)) given['fluid'] = fluid;
  else troubles.set(FLUID_PATH, { kind: 'fluid' });
  if (typedAt(sheet, FLUID_PATH) !== undefined && !troubles.has(FLUID_PATH)) yours += 1;
  const of = fields.length + lists.length + 1;
  const assumed = of - yours - troubles.size;

  let whole: TransmissionSheet | null = null;
  try {
    whole = parseSheet(given);
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    for (const { argument, message } of error.faults) {
      const path = shownAt(argument);
      if (!troubles.has(path)) troubles.set(path, { kind: 'check', path, message });
    }
  }
  return {
    whole: troubles.size === 0 ? whole : null,
    troubles,
    yours,
    assumed,
    of,
  };
}
