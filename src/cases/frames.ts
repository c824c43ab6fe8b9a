/**
 * What the training controller stores on each car of the list: a range selected at standstill, held, and a take-off, in Drive and
 * in Reverse, at six temperatures. Kept in kept-frames.ts, since it takes some seconds.
 */
import {
  illustrativeSettings,
  makeFluid,
  solveEngagement,
  training,
  trainingStory,
  type DriveRange,
} from '../engine/index.ts';
import { CLASSES, hasSeverity, NODES, withFault, type FaultClass } from '../diagnosis/index.ts';
import { DRIVES_C } from './frame-form.ts';
import { keptAccounts } from './kept-accounts.ts';

const PA_PER_KPA = 1000;

/** One drive in one range at a temperature [°C], from standstill. */
export function driven(of: FaultClass, severity: number, tempC: number, range: DriveRange) {
  const plant = withFault(training, of, severity);
  return solveEngagement({
    plant,
    fluid: makeFluid(plant.fluid),
    tempC,
    range,
    rangeSelection: 'electronic',
    outputStep: illustrativeSettings.sample,
  });
}

/** What is kept of the moment when first gear's code is stored; empty where it is not. The form is in frame-form.ts. */
function firstFrame(of: FaultClass, severity: number, tempC: number, place: number) {
  const { events, trace } = driven(of, severity, tempC, 'drive');
  const code = events.find(({ event }) => event === 'code stored');
  if (code === undefined) return [];
  const row = Math.round(code.time / illustrativeSettings.sample);
  const at = (column: keyof typeof trace): number => trace[column][row] ?? Number.NaN;
  return [
    place,
    100 * (code.time - trainingStory.select),
    at('engineRpm'),
    at('turbineSeenRpm'),
    at('outputRpm'),
    at('clutchCommand') / PA_PER_KPA,
    at('clutchPressure') / PA_PER_KPA,
  ].map((value) => Math.round(value));
}

const storesReverse = (of: FaultClass, severity: number, tempC: number): boolean =>
  driven(of, severity, tempC, 'reverse').events.some(({ event }) => event === 'code stored');

/** One car: place of its class, severity [%], on which drives Reverse stores its code, then the frames of first gear. */
export function carRow(index: number, percent: number): readonly number[] {
  const of = CLASSES[index];
  if (of === undefined) throw new Error(`There is no class ${index}.`);
  // First and Reverse do not use the high clutch.
  if (of.circuit === 'high') return [index, percent, 0];
  const severity = percent / 100;
  const reverse = DRIVES_C.reduce<number>(
    (bits, tempC, place) => bits + (storesReverse(of, severity, tempC) ? 2 ** place : 0),
    0,
  );
  return [
    index,
    percent,
    reverse,
    ...DRIVES_C.flatMap((tempC, place) => firstFrame(of, severity, tempC, place)),
  ];
}

/** From the mildest car whose customer notices something to the worst; the one car where there is no severity. */
export const percentsOf = (index: number): readonly number[] => {
  const [, least = 100] = keptAccounts.find(([first]) => first === index) ?? [];
  const of = CLASSES[index];
  if (of === undefined || !hasSeverity(of.name)) return [100];
  return NODES.map((node) => Math.round(100 * node)).filter((percent) => percent >= least);
};

/** All of them, class by class; none for a cause that is not in the list. */
export const workOutFrames = (): readonly (readonly number[])[] =>
  CLASSES.flatMap(({ name }, index) =>
    name === 'unlisted' ? [] : percentsOf(index).map((percent) => carRow(index, percent)),
  );
