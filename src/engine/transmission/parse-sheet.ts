import { requireInRange, type Allowed } from '../error.ts';
import { FLUID_LIMITS, fluidClasses, makeFluid } from '../fluid/fluid.ts';
import { CIRCUITS, GEARS } from './circuits.ts';
import type { Circuit } from './circuits.ts';
import { CLUTCH_FIELDS, SHEET_FIELDS } from './sheet-fields.ts';
import { fluidOnSheet, refuseSheet } from './sheet.ts';
import type { FluidOnSheet, TransmissionSheet } from './sheet.ts';
import { checkSheet } from './check-sheet.ts';
import { trainingSheet } from './sheets.ts';

type Loose = Readonly<Record<string, unknown>>;
type Fields = Readonly<Record<string, Allowed>>;

const list = (names: readonly string[]): string => names.join(', ');

function object(given: unknown, path: string, allowed: readonly string[]): Loose {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    const what = path === '' ? 'The transmission sheet' : path;
    refuseSheet(path, `${what} must be an object with any of the keys ${list(allowed)}.`);
  }
  for (const key of Object.keys(given)) {
    if (allowed.includes(key)) continue;
    const where = path === '' ? 'the transmission sheet' : path;
    refuseSheet(
      path === '' ? key : `${path}.${key}`,
      `There is no key ${key.slice(0, 40)} in ${where}; the keys are ${list(allowed)}.`,
    );
  }
  return given as Loose;
}

function number(given: unknown, path: string, allowed: Allowed): number {
  if (typeof given !== 'number') {
    const unit = allowed.unit === '' ? '' : ` ${allowed.unit}`;
    refuseSheet(
      path,
      `${path} (${allowed.name.toLowerCase()}) must be a number from ${allowed.min} to ${allowed.max}${unit}.`,
    );
  }
  try {
    return requireInRange(given, allowed);
  } catch (thrown) {
    return refuseSheet(path, `${path}: ${(thrown as Error).message}`);
  }
}

/** The numbers of one section that were given. */
function section(given: unknown, path: string, fields: Fields, also: readonly string[] = []) {
  const loose = object(given, path, [...Object.keys(fields), ...also]);
  const numbers: Record<string, number> = {};
  for (const [key, allowed] of Object.entries(fields)) {
    if (loose[key] !== undefined) numbers[key] = number(loose[key], `${path}.${key}`, allowed);
  }
  return numbers;
}

function circuits(given: unknown, path: string): readonly Circuit[] {
  const known: readonly string[] = CIRCUITS;
  const right =
    Array.isArray(given) &&
    given.length > 0 &&
    given.every((name) => known.includes(name as string)) &&
    new Set(given).size === given.length;
  if (!right) {
    refuseSheet(path, `${path} must be a list of one or more of ${list(known)}, each once.`);
  }
  return given as readonly Circuit[];
}

function fluid(given: unknown): TransmissionSheet['fluid'] {
  const classes = Object.keys(fluidClasses);
  if (typeof given === 'string') {
    if (!classes.includes(given)) {
      refuseSheet(
        'fluid',
        `fluid is ${given.slice(0, 40)}; it must be one of ${list(classes)}, or an object of its own.`,
      );
    }
    return given as TransmissionSheet['fluid'];
  }
  const { kv40CSt, kv100CSt, density15 } = FLUID_LIMITS;
  const fields = { kv40_cSt: kv40CSt, kv100_cSt: kv100CSt, density15_kgm3: density15 };
  const own = section(given, 'fluid', fields);
  for (const key of Object.keys(fields)) {
    if (own[key] === undefined) {
      refuseSheet(`fluid.${key}`, `fluid.${key} is missing; a fluid of its own needs all three.`);
    }
  }
  const spec = own as unknown as FluidOnSheet;
  try {
    makeFluid(fluidOnSheet(spec));
  } catch (thrown) {
    refuseSheet('fluid.kv100_cSt', (thrown as Error).message);
  }
  return spec;
}

function name(given: unknown): string {
  if (typeof given !== 'string' || given.trim() === '' || given.length > 60) {
    refuseSheet('name', 'name must be text of 1 to 60 characters.');
  }
  return given.trim();
}

const isField = (entry: Allowed | Fields): entry is Allowed =>
  typeof (entry as Allowed).unit === 'string';

/** What each key that is no plain number makes of what was given, over what stood there before. */
const special: Readonly<Record<string, (given: unknown, before: TransmissionSheet) => unknown>> = {
  name,
  fluid,
  seal: (given, before) => ({
    ...before.seal,
    ...section(given, 'seal', SHEET_FIELDS.seal, ['circuits']),
    ...((given as Loose)['circuits'] === undefined
      ? {}
      : { circuits: circuits((given as Loose)['circuits'], 'seal.circuits') }),
  }),
  clutches: (given, before) => {
    const loose = object(given, 'clutches', CIRCUITS);
    const changed: Record<string, unknown> = { ...before.clutches };
    for (const [circuit, clutch] of Object.entries(loose)) {
      const own = section(clutch, `clutches.${circuit}`, CLUTCH_FIELDS);
      changed[circuit] = { ...before.clutches[circuit as Circuit], ...own };
    }
    return changed;
  },
  applyChart: (given, before) => {
    const loose = object(given, 'applyChart', GEARS);
    const gears = Object.entries(loose).map(
      ([gear, on]) => [gear, circuits(on, `applyChart.${gear}`)] as const,
    );
    return { ...before.applyChart, ...Object.fromEntries(gears) };
  },
};

/**
 * A transmission sheet out of whatever was given: every key known, every number in its range, and the numbers fit each
 * other. What is left out is taken from another sheet.
 *
 * @param given a whole or partial sheet, as read from JSON [units in the names of its keys]
 * @param over the sheet that fills the gaps; the training transmission where left out [-]
 * @returns a whole sheet [units in the names of its keys]
 * Range: SHEET_FIELDS; checkSheet for what two numbers must be to each other.
 * @throws EngineError naming the key, what was wrong and what is allowed.
 * Source: bookkeeping, no physics; the ranges are ours.
 * @example
 * parseSheet({ pump: { displacement_cm3: 12 } }).pump.displacement_cm3 // 12
 */
export function parseSheet(
  given: unknown,
  over: TransmissionSheet = trainingSheet,
): TransmissionSheet {
  const keys = [...new Set([...Object.keys(SHEET_FIELDS), ...Object.keys(special)])];
  const loose = object(given, '', keys);
  const sheet: Record<string, unknown> = { ...over };
  for (const [key, value] of Object.entries(loose)) {
    if (value === undefined) continue;
    const own = special[key];
    const entry = (SHEET_FIELDS as Readonly<Record<string, Allowed | Fields>>)[key];
    if (own !== undefined) sheet[key] = own(value, over);
    else if (entry !== undefined && isField(entry)) sheet[key] = number(value, key, entry);
    else if (entry !== undefined) {
      sheet[key] = { ...(sheet[key] as object), ...section(value, key, entry) };
    }
  }
  return checkSheet(sheet as TransmissionSheet);
}
