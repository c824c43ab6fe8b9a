/**
 * What a code and its freeze frame leave of the list: every car on every drive is run beforehand, and those whose controller
 * stores the same are what is left. Bits by Shannon's measure.
 */
import { CLASSES, NAMES, type Name } from '../diagnosis/hypotheses.ts';
import { DRIVES_C, FRAME_WIDTH, FRAMES_FROM } from './frame-form.ts';
import { keptFrames } from './kept-frames.ts';
import { entropy } from './talk-list.ts';

/** What can be read of a stored code, in the order of a job sheet. */
export const LINES = ['code', 'other', 'temp', 'time', 'speeds', 'output', 'command'] as const;
export type Line = (typeof LINES)[number];

/** What the controller kept of the moment when it stored a code. */
export interface Frame {
  /** After selection [s]. */
  readonly after: number;
  readonly engine: number;
  readonly turbine: number;
  readonly output: number;
  /** [kPa] */
  readonly command: number;
  /** In the clutch [kPa]; the controller does not know it. */
  readonly pressure: number;
}

/** One car at one temperature: what it stored for first gear, and whether it stored Reverse's code. */
export interface Drive {
  /** Which car it is: a row of what is kept. */
  readonly car: readonly number[];
  readonly name: Name;
  readonly tempC: number;
  readonly weight: number;
  readonly first: Frame | null;
  readonly reverse: boolean;
}

/** The fifteen faults and a good car; what is not in the list cannot be run. */
export const LISTED: readonly Name[] = NAMES.filter((name) => name !== 'unlisted');

function firstIn(row: readonly number[], temp: number): Frame | null {
  for (let at = FRAMES_FROM; at < row.length; at += FRAME_WIDTH) {
    if (row[at] !== temp) continue;
    const [hundredths = 0, engine = 0, turbine = 0, output = 0, command = 0, pressure = 0] =
      row.slice(at + 1, at + FRAME_WIDTH);
    return { after: hundredths / 100, engine, turbine, output, command, pressure };
  }
  return null;
}

function drivesOf(row: readonly number[]): readonly Drive[] {
  const [index = -1, , reverse = 0] = row;
  const of = CLASSES[index];
  if (of === undefined) throw new Error('A car of no class is kept.');
  const alike = keptFrames.filter(([other]) => other === index).length;
  const circuits = CLASSES.filter(({ name }) => name === of.name).length;
  // Names alike, a name's circuits alike, a circuit's cars alike, temperatures alike.
  const weight = 1 / LISTED.length / circuits / alike / DRIVES_C.length;
  return DRIVES_C.map((tempC, place) => ({
    car: row,
    name: of.name,
    tempC,
    weight,
    first: firstIn(row, place),
    reverse: Math.floor(reverse / 2 ** place) % 2 === 1,
  }));
}

let known: readonly Drive[] | undefined;
/** All of them; worked out when they are first asked for. */
export const drives = (): readonly Drive[] => (known ??= keptFrames.flatMap(drivesOf));

/** A code stored so soon after selection [s] was stored at the first two checks, as the brake was let go. */
const AT_ONCE = 3.3;
/** Turbine over engine: it runs free with it; it is pulled down in part. */
const FREE = 0.95;
const PART = 0.6;
/** Output [rpm]: under the first it stands, under the second it creeps. */
const STANDS = 5;
const CREEPS = 50;

/** A command over this [kPa] had risen with the throttle. */
const RISEN = 350;

const step = (value: number, ...limits: readonly number[]): number =>
  limits.filter((limit) => value >= limit).length;

/** A line as roughly as it may be read, since no two cars are alike to the last figure. */
export function roughly({ tempC, first, reverse }: Drive, line: Line): number {
  if (line === 'code') return first ? 1 : 0;
  if (line === 'other') return reverse ? 1 : 0;
  if (first === null) return -1;
  switch (line) {
    case 'temp':
      return tempC;
    case 'time':
      return step(first.after, AT_ONCE);
    case 'speeds':
      return step(first.turbine / first.engine, PART, FREE);
    case 'output':
      return step(first.output, STANDS, CREEPS);
    case 'command':
      // It follows the throttle, and so the time: once that is read, it tells nothing more.
      return step(first.command, RISEN);
  }
}

/** Drives that would leave the same, in the lines that were read. */
export const sameAs = (job: Drive, read: readonly Line[]): readonly Drive[] =>
  drives().filter((one) => read.every((line) => roughly(one, line) === roughly(job, line)));

/** Share of each name among drives, in the order of LISTED. */
export function sharesOf(among: readonly Drive[]): readonly number[] {
  const all = among.reduce((sum, { weight }) => sum + weight, 0);
  return LISTED.map((listed) =>
    among.reduce((sum, { name, weight }) => (name === listed ? sum + weight / all : sum), 0),
  );
}

/** What a line tells of the name on the average, before it is read [bits]. */
export function lineWorth(job: Drive, read: readonly Line[], line: Line): number {
  const among = sameAs(job, read);
  const total = (some: readonly Drive[]) => some.reduce((sum, { weight }) => sum + weight, 0);
  const steps = [...new Set(among.map((one) => roughly(one, line)))];
  const left = steps.reduce((sum, step) => {
    const group = among.filter((one) => roughly(one, line) === step);
    return sum + (total(group) / total(among)) * entropy(sharesOf(group));
  }, 0);
  return Math.max(0, entropy(sharesOf(among)) - left);
}

/** A car of a name, so far gone [%] between its mildest and its worst; a fault of one circuit sits in the forward clutch. */
export function jobOf(name: Name, gone: number, tempC: number): Drive {
  const index = CLASSES.findIndex(
    (of) => of.name === name && (of.circuit === undefined || of.circuit === 'forward'),
  );
  const cars = drives().filter(({ car, tempC: at }) => car[0] === index && at === tempC);
  const job = cars[Math.round((gone / 100) * (cars.length - 1))];
  if (job === undefined) throw new Error(`There is no drive of ${name} at ${tempC} °C.`);
  return job;
}

/** Faults that store the code of first gear on some drive. */
export const storesFirst = (): readonly Name[] =>
  LISTED.filter((name) => drives().some((one) => one.name === name && one.first !== null));

/** Cars that store the code of first gear at one temperature, and those of them that do not at another [°C]. */
export function storedAt(tempC: number, notAt: number) {
  const stores = (car: Drive['car'], at: number): boolean =>
    drives().some((one) => one.car === car && one.tempC === at && one.first !== null);
  const stored = drives().filter((one) => one.tempC === tempC && one.first !== null);
  const silent = stored.filter(({ car }) => !stores(car, notAt));
  const names = (some: readonly Drive[]): number => new Set(some.map(({ name }) => name)).size;
  return {
    cars: stored.length,
    silent: silent.length,
    names: names(stored),
    silentNames: names(silent),
  };
}
