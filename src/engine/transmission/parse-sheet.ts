import { requireInRange, type Allowed } from '../error.ts';
import { FLUID_LIMITS, fluidClasses, makeFluid } from '../fluid/fluid.ts';
import { CIRCUITS, GEARS } from './circuits.ts';
import type { Circuit } from './circuits.ts';
import { CLUTCH_FIELDS, SHEET_FIELDS } from './sheet-fields.ts';
import { fluidOnSheet, sheetFaults } from './sheet.ts';
import type { FluidOnSheet, SheetFaults, TransmissionSheet } from './sheet.ts';
import { checkSheet } from './check-sheet.ts';
import { trainingSheet } from './sheets.ts';

type Loose = Readonly<Record<string, unknown>>;
type Fields = Readonly<Record<string, Allowed>>;

const list = (names: readonly string[]): string => names.join(', ');

const isObject = (given: unknown): given is Loose =>
  typeof given === 'object' && given !== null && !Array.isArray(given);

function object(
  given: unknown,
  path: string,
  allowed: readonly string[],
  faults: SheetFaults,
): Loose {
  if (!isObject(given)) {
    const what = path === '' ? 'The transmission sheet' : path;
    faults.add(path, `${what} must be an object with any of the keys ${list(allowed)}.`);
    return {};
  }
  const unknown = Object.keys(given).filter((key) => !allowed.includes(key));
  const [first] = unknown;
  if (first !== undefined) {
    const where = path === '' ? 'the transmission sheet' : path;
    const shown = unknown.slice(0, 5).map((key) => key.slice(0, 40));
    const others = unknown.length > 5 ? ` and ${unknown.length - 5} more` : '';
    const none = unknown.length === 1 ? 'is no key' : 'are no keys';
    faults.add(
      path === '' ? first : `${path}.${first}`,
      `There ${none} ${list(shown)}${others} in ${where}; the keys are ${list(allowed)}.`,
    );
  }
  return given;
}

function number(
  given: unknown,
  path: string,
  allowed: Allowed,
  faults: SheetFaults,
): number | undefined {
  if (typeof given === 'number') {
    return faults.attempt(
      path,
      () => requireInRange(given, allowed),
      (said) => `${path}: ${said}`,
    );
  }
  const unit = allowed.unit === '' ? '' : ` ${allowed.unit}`;
  faults.add(
    path,
    `${path} (${allowed.name.toLowerCase()}) must be a number from ${allowed.min} to ${allowed.max}${unit}.`,
  );
  return undefined;
}

/** The numbers of one section that were given and are right. */
function section(
  given: unknown,
  path: string,
  fields: Fields,
  faults: SheetFaults,
  also: readonly string[] = [],
) {
  const loose = object(given, path, [...Object.keys(fields), ...also], faults);
  const numbers: Record<string, number> = {};
  for (const [key, allowed] of Object.entries(fields)) {
    if (loose[key] === undefined) continue;
    const right = number(loose[key], `${path}.${key}`, allowed, faults);
    if (right !== undefined) numbers[key] = right;
  }
  return numbers;
}

function circuits(given: unknown, path: string, faults: SheetFaults): readonly Circuit[] {
  const known: readonly string[] = CIRCUITS;
  const right =
    Array.isArray(given) &&
    given.length > 0 &&
    given.every((name) => known.includes(name as string)) &&
    new Set(given).size === given.length;
  if (!right) {
    faults.add(path, `${path} must be a list of one or more of ${list(known)}, each once.`);
  }
  return given as readonly Circuit[];
}

function fluid(given: unknown, faults: SheetFaults): TransmissionSheet['fluid'] {
  const classes = Object.keys(fluidClasses);
  if (typeof given === 'string') {
    if (!classes.includes(given)) {
      faults.add(
        'fluid',
        `fluid is ${given.slice(0, 40)}; it must be one of ${list(classes)}, or an object of its own.`,
      );
    }
    return given as TransmissionSheet['fluid'];
  }
  const { kv40CSt, kv100CSt, density15 } = FLUID_LIMITS;
  const fields = { kv40_cSt: kv40CSt, kv100_cSt: kv100CSt, density15_kgm3: density15 };
  const own = section(given, 'fluid', fields, faults);
  const spec = own as unknown as FluidOnSheet;
  const missing = Object.keys(fields).filter((key) => isObject(given) && given[key] === undefined);
  for (const key of missing) {
    faults.add(`fluid.${key}`, `fluid.${key} is missing; a fluid of its own needs all three.`);
  }
  if (Object.keys(own).length === Object.keys(fields).length) {
    faults.attempt('fluid.kv100_cSt', () => makeFluid(fluidOnSheet(spec)));
  }
  return spec;
}

function name(given: unknown, faults: SheetFaults): string {
  if (typeof given === 'string' && given.trim() !== '' && given.length <= 60) return given.trim();
  faults.add('name', 'name must be text of 1 to 60 characters.');
  return '';
}

const isField = (entry: Allowed | Fields): entry is Allowed =>
  typeof (entry as Allowed).unit === 'string';

type Special = (given: unknown, before: TransmissionSheet, faults: SheetFaults) => unknown;

/** What each key that is no plain number makes of what was given, over what stood there before. */
const special: Readonly<Record<string, Special>> = {
  name: (given, _before, faults) => name(given, faults),
  fluid: (given, _before, faults) => fluid(given, faults),
  seal: (given, before, faults) => {
    const own = section(given, 'seal', SHEET_FIELDS.seal, faults, ['circuits']);
    const on = isObject(given) ? given['circuits'] : undefined;
    return {
      ...before.seal,
      ...own,
      ...(on === undefined ? {} : { circuits: circuits(on, 'seal.circuits', faults) }),
    };
  },
  clutches: (given, before, faults) => {
    const loose = object(given, 'clutches', CIRCUITS, faults);
    const changed: Record<string, unknown> = { ...before.clutches };
    for (const circuit of CIRCUITS) {
      if (loose[circuit] === undefined) continue;
      const own = section(loose[circuit], `clutches.${circuit}`, CLUTCH_FIELDS, faults);
      changed[circuit] = { ...before.clutches[circuit], ...own };
    }
    return changed;
  },
  applyChart: (given, before, faults) => {
    const loose = object(given, 'applyChart', GEARS, faults);
    const gears = GEARS.filter((gear) => loose[gear] !== undefined).map(
      (gear) => [gear, circuits(loose[gear], `applyChart.${gear}`, faults)] as const,
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
 * @throws SheetError with every fault: the key, what was wrong and what is allowed. Whether numbers fit each other is
 * looked at once each is right by itself.
 * Source: bookkeeping, no physics; the ranges are ours.
 * @example
 * parseSheet({ pump: { displacement_cm3: 12 } }).pump.displacement_cm3 // 12
 */
export function parseSheet(
  given: unknown,
  over: TransmissionSheet = trainingSheet,
): TransmissionSheet {
  const keys = [...new Set([...Object.keys(SHEET_FIELDS), ...Object.keys(special)])];
  const faults = sheetFaults();
  const loose = object(given, '', keys, faults);
  const sheet: Record<string, unknown> = { ...over };
  for (const key of keys) {
    const value = loose[key];
    if (value === undefined || !Object.hasOwn(loose, key)) continue;
    const own = special[key];
    const entry = (SHEET_FIELDS as Readonly<Record<string, Allowed | Fields>>)[key];
    if (own !== undefined) sheet[key] = own(value, over, faults);
    else if (entry !== undefined && isField(entry)) sheet[key] = number(value, key, entry, faults);
    else if (entry !== undefined) {
      sheet[key] = { ...(sheet[key] as object), ...section(value, key, entry, faults) };
    }
  }
  faults.refuse();
  return checkSheet(sheet as TransmissionSheet);
}
