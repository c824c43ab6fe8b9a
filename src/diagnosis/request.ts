/** A question to the planner as it comes from outside, read strictly (specification of the planner, section 9). */
import { isName, NAMES, type Name } from './hypotheses.ts';
import { ARRIVES, type CarState } from './car-state.ts';
import type { TakenReading } from './posterior.ts';
import {
  CODES,
  OUTCOMES,
  SET_UPS,
  TESTS,
  WARMTHS,
  type SetUp,
  type Test,
  type Warmth,
} from './tests.ts';

/** What was wrong, and where. */
export interface Wrong {
  readonly error: string;
  readonly path: string;
}
/** A question that can be answered. */
export interface Question {
  readonly readings: readonly TakenReading[];
  readonly state: CarState;
  readonly priors: Readonly<Partial<Record<Name, number>>>;
}

/** Thrown and caught in this file alone. */
class Refused extends Error {
  readonly path: string;
  constructor(path: string, message: string) {
    super(message);
    this.path = path;
  }
}

type Given = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Given =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const shown = (value: unknown): string => {
  // Undefined and functions have no text.
  const text = (JSON.stringify(value) as string | undefined) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
};
const oneOf = (all: readonly string[]): string => `one of ${all.join(', ')}`;

function onlyKeys(given: Given, allowed: readonly string[], path: string): void {
  const prefix = path === '' ? '' : `${path}.`;
  for (const key of Object.keys(given)) {
    if (!allowed.includes(key)) {
      throw new Refused(
        `${prefix}${key}`,
        `"${key}" is not known here; allowed: ${allowed.join(', ')}.`,
      );
    }
  }
}

const KINDS = [...new Set(TESTS.map(({ kind }) => kind))];
/** What a value may be, in the unit of the request. */
const RANGES: Readonly<Record<string, readonly [least: number, most: number, unit: string]>> = {
  linePressure: [0, 3000, 'kPa'],
  clutchPressure: [0, 3000, 'kPa'],
  stopTime: [0, 60, 's'],
  takeoffSlip: [0, 10_000, 'rpm'],
  coolerFlow: [0, 100, 'L/min'],
  airTest: [0, 100, '%'],
  engineOffTurbine: [0, 10_000, 'rpm'],
  fluidCup: [1, 3000, 'cSt'],
};
/** What each test is told apart by, as the request names it. */
const CONDITIONS: Readonly<Record<string, readonly string[]>> = {
  linePressure: ['range', 'engine_rpm', 'temperature_C'],
  clutchPressure: ['circuit', 'engine_rpm', 'temperature_C'],
  stopTime: ['range', 'temperature_C'],
  takeoffSlip: ['range', 'temperature_C'],
  coolerFlow: ['range', 'engine_rpm', 'temperature_C'],
  gaugeFlutter: ['range', 'engine_rpm', 'temperature_C'],
  airTest: ['circuit'],
  airWhere: ['circuit'],
  solenoidCurrent: ['circuit'],
};

const bands = Object.entries(WARMTHS)
  .map(([name, { from, to }]) => `${from} to ${to} (${name})`)
  .join(', ');
function warmthOf(value: unknown, path: string): Warmth {
  const found = (Object.keys(WARMTHS) as Warmth[]).find(
    (name) => typeof value === 'number' && value >= WARMTHS[name].from && value <= WARMTHS[name].to,
  );
  if (found === undefined) {
    throw new Refused(path, `temperature_C is ${shown(value)}; it must be ${bands}.`);
  }
  return found;
}

function valueOf(kind: string, value: unknown, path: string): TakenReading['value'] {
  const range = RANGES[kind];
  if (range) {
    const [least, most, unit] = range;
    if (value === null && kind === 'stopTime') return null;
    if (typeof value === 'number' && value >= least && value <= most) return value;
    const never = kind === 'stopTime' ? ', or null where it did not stop' : '';
    throw new Refused(
      path,
      `value is ${shown(value)}; it must be ${least} to ${most} ${unit}${never}.`,
    );
  }
  if (kind === 'codes') {
    if (!Array.isArray(value)) {
      throw new Refused(path, `value is ${shown(value)}; it must be a list of codes, [] for none.`);
    }
    const strange = (value as unknown[]).findIndex(
      (code) => !(CODES as readonly unknown[]).includes(code),
    );
    if (strange >= 0) {
      throw new Refused(
        `${path}[${strange}]`,
        `${shown((value as unknown[])[strange])} is not among the codes that count: ${CODES.join(', ')}.`,
      );
    }
    return value as string[];
  }
  const outcomes = OUTCOMES[kind as keyof typeof OUTCOMES] as readonly string[];
  if (typeof value === 'string' && outcomes.includes(value)) return value;
  throw new Refused(path, `value is ${shown(value)}; it must be ${oneOf(outcomes)}.`);
}

function readingOf(given: unknown, path: string): TakenReading {
  if (!isObject(given)) {
    throw new Refused(path, `A reading is ${shown(given)}; it must be an object with a test.`);
  }
  const asked = given['test'];
  const kind = KINDS.find((one) => one === asked);
  if (kind === undefined) {
    throw new Refused(`${path}.test`, `test is ${shown(asked)}; it must be ${oneOf(KINDS)}.`);
  }
  const conditions = CONDITIONS[kind] ?? [];
  onlyKeys(given, ['test', ...conditions, 'value'], path);
  for (const key of [...conditions, 'value']) {
    if (!Object.hasOwn(given, key)) {
      throw new Refused(
        `${path}.${key}`,
        `${key} is missing; ${kind} needs ${[...conditions, 'value'].join(', ')}.`,
      );
    }
  }
  const temperatureC = given['temperature_C'];
  const warmth = conditions.includes('temperature_C')
    ? warmthOf(temperatureC, `${path}.temperature_C`)
    : undefined;
  const value = valueOf(kind, given['value'], `${path}.value`);
  const test = TESTS.find(
    ({ kind: of, at }) =>
      of === kind &&
      at.range === given['range'] &&
      at.circuit === given['circuit'] &&
      at.rpm === given['engine_rpm'] &&
      at.warmth === warmth,
  );
  if (test === undefined) {
    const there = TESTS.filter(({ kind: of }) => of === kind).map(({ id }) => id);
    throw new Refused(
      path,
      `There is no ${kind} under these conditions; there are ${there.join(', ')}.`,
    );
  }
  return { test, value, ...(warmth !== undefined && { temperatureC: temperatureC as number }) };
}

function priorsOf(given: unknown): Question['priors'] {
  if (given === undefined) return {};
  if (!isObject(given))
    throw new Refused('priors', 'priors must be an object of names and weights.');
  for (const [name, weight] of Object.entries(given)) {
    if (!isName(name)) {
      throw new Refused(`priors.${name}`, `"${name}" is no fault; there are ${NAMES.join(', ')}.`);
    }
    if (!(Number.isFinite(weight) && (weight as number) >= 0)) {
      throw new Refused(
        `priors.${name}`,
        `The weight of ${name} is ${shown(weight)}; it must be a number of 0 or more.`,
      );
    }
  }
  const weights = given as Question['priors'];
  if (NAMES.every((name) => weights[name] === 0)) {
    throw new Refused('priors', 'All weights are 0; at least one must be more.');
  }
  return weights;
}

function stateOf(given: unknown): CarState {
  if (given === undefined) return ARRIVES;
  if (!isObject(given)) throw new Refused('state', 'state must be an object.');
  onlyKeys(given, ['temperature', 'fitted', 'coldMorning'], 'state');
  const { temperature = ARRIVES.temperature, fitted = [], coldMorning = false } = given;
  if (!Object.hasOwn(WARMTHS, temperature as string)) {
    throw new Refused(
      'state.temperature',
      `temperature is ${shown(temperature)}; it must be ${oneOf(Object.keys(WARMTHS))}.`,
    );
  }
  if (!Array.isArray(fitted)) {
    throw new Refused('state.fitted', `fitted is ${shown(fitted)}; it must be a list of set-ups.`);
  }
  (fitted as unknown[]).forEach((one, i) => {
    if (!(SET_UPS as readonly unknown[]).includes(one)) {
      throw new Refused(
        `state.fitted[${i}]`,
        `${shown(one)} is no set-up; there are ${SET_UPS.join(', ')}.`,
      );
    }
  });
  if (typeof coldMorning !== 'boolean') {
    throw new Refused(
      'state.coldMorning',
      `coldMorning is ${shown(coldMorning)}; it must be true or false.`,
    );
  }
  return { temperature: temperature as Warmth, fitted: fitted as SetUp[], coldMorning };
}

/** Reads a question; a wrong one comes back as a sentence and a place, never as an exception. */
export function readQuestion(given: unknown): Question | Wrong {
  try {
    if (!isObject(given))
      throw new Refused('', `The request is ${shown(given)}; it must be an object.`);
    onlyKeys(given, ['kind', 'readings', 'priors', 'state', 'transmission'], '');
    const { readings } = given;
    if (!Array.isArray(readings)) {
      throw new Refused(
        'readings',
        `readings is ${shown(readings)}; it must be a list, [] for none.`,
      );
    }
    return {
      readings: (readings as unknown[]).map((one, i) => readingOf(one, `readings[${i}]`)),
      priors: priorsOf(given['priors']),
      state: stateOf(given['state']),
    };
  } catch (thrown) {
    if (thrown instanceof Refused) return { error: thrown.message, path: thrown.path };
    throw thrown;
  }
}

/** A test as a request names it, at the nominal temperature. */
export function namedAsRequest({ kind, at }: Test): Readonly<Record<string, unknown>> {
  return {
    test: kind,
    ...(at.range !== undefined && { range: at.range }),
    ...(at.circuit !== undefined && { circuit: at.circuit }),
    ...(at.rpm !== undefined && { engine_rpm: at.rpm }),
    ...(at.warmth !== undefined && { temperature_C: WARMTHS[at.warmth].at }),
  };
}
