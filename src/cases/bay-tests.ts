/**
 * Tests of a shop with what they can say in words: fifteen of the planner's, each with its minutes. A number is told roughly,
 * as on a job sheet: the order of tests asks no more of it.
 */
import { testOf, type Test } from '../diagnosis/tests.ts';

/** Where the fluid stands in time to stop [s], in share of a command, in air held [%], and a speed that is none [rpm]. */
export const IN_TIME = 1;
export const STOPPED = 2.5;
export const HAS_ITS_COMMAND = 0.85;
export const HALF = 0.5;
export const AIR_HOLDS = 80;
const NO_SPEED = 150;
/** Hot, at idle, in Drive [kPa]. */
const COMMANDED = { line: 600, forward: 400 } as const;

export interface BayTest {
  readonly key: string;
  /** The planner's. */
  readonly test: Test;
  /** A reading in numbers is cut here, on the solver's scale. */
  readonly cuts?: readonly number[];
}

const words = <Key extends string>(key: Key, id: string) => ({ key, test: testOf(id) });
const cut = <Key extends string>(key: Key, id: string, ...cuts: readonly number[]) => ({
  ...words(key, id),
  cuts,
});
const stop = <Key extends string>(key: Key, id: string) => cut(key, id, IN_TIME, STOPPED);
const pressed = <Key extends string>(key: Key, id: string, command: number) =>
  cut(key, id, HALF * command, HAS_ITS_COMMAND * command);

/** From the seat inward. */
export const BAY_TESTS = [
  words('codes', 'codes'),
  cut('turbine', 'engineOffTurbine', NO_SPEED),
  stop('cold', 'stopTime.drive.cold'),
  stop('hotDrive', 'stopTime.drive.hot'),
  stop('hotReverse', 'stopTime.reverse.hot'),
  words('current', 'solenoidCurrent.forward'),
  words('level', 'fluidLevel'),
  words('look', 'fluidLook'),
  words('cable', 'cable'),
  pressed('line', 'line.drive.700.hot', COMMANDED.line),
  pressed('tap', 'clutch.forward.700.hot', COMMANDED.forward),
  words('pan', 'panFilter'),
  words('bore', 'boreVacuum'),
  words('air', 'airWhere.forward'),
  cut('seal', 'airTest.transferSeal', AIR_HOLDS),
] as const satisfies readonly BayTest[];
export type BayKey = (typeof BAY_TESTS)[number]['key'];
export const BAY_KEYS: readonly BayKey[] = BAY_TESTS.map(({ key }) => key);

/** How far one reaches for a test: the seat, under the car, a line opened, the pan off, the valve body off. */
export const REACHES = ['seat', 'outside', 'line', 'pan', 'body'] as const;
export type Reach = (typeof REACHES)[number];
export const reachOf = ({ test: { invasive, setUps } }: BayTest): Reach =>
  REACHES[invasive === 0 ? (setUps.includes('lift') ? 1 : 0) : invasive + 1] ?? 'seat';
/** Whether a test opens the transmission itself. */
export const opens = ({ test }: BayTest): boolean => test.invasive >= 2;

/** Nothing is opened before these: the rule of the shop, whatever the minutes say (common practice, no source). */
export const BEFORE_OPENING: readonly BayKey[] = ['codes', 'level', 'hotDrive', 'cable'];
