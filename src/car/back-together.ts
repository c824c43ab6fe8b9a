/**
 * The way back together as lines of a job card: what each line hides or spoils, so what has to be proved before it, and what the
 * car does if a proof was left out and the thing went wrong unseen. The order is common practice, no source; how far each
 * thing goes wrong is invented, but for the bridge, which stands off by as much as the course's seal was cracked.
 */
import { airHeld, training, type Circuit, type FaultSet } from '../engine/index.ts';
import { crackFault, makeCar, REFERENCE_CRACK_MM } from './car.ts';
import { COLD_C, HOT_C } from './cold-and-hot.ts';
import { needs } from './need.ts';
import { levelOf, WINDOW_C } from './pan.ts';
import { readingOf } from './readings.ts';

export const STEPS = [
  'clean',
  'lip',
  'rings',
  'drums',
  'air',
  'balls',
  'bridge',
  'body',
  'pan',
  'fill',
  'level',
  'relearn',
  'drive',
] as const;
export type Step = (typeof STEPS)[number];
type Steps = readonly Step[];

/** What a step hides or spoils at once; what lies further back follows. */
export const BEFORE: Readonly<Record<Step, Steps>> = {
  clean: [],
  lip: ['clean'],
  rings: ['clean'],
  drums: ['lip', 'rings'],
  air: ['drums'],
  balls: ['clean'],
  bridge: ['air'],
  body: ['air', 'balls', 'bridge'],
  pan: ['body'],
  fill: ['pan'],
  level: ['fill'],
  relearn: ['level'],
  drive: ['relearn'],
};

/** Why a step has to wait: the first proof that it would hide; none where it may be taken. */
export const missingBefore = (step: Step, done: Steps): Step | undefined =>
  BEFORE[step].find((one) => !done.includes(one));

/** The steps that hide one, near and far. */
export function hidersOf(step: Step): Steps {
  const hiding = new Set<Step>();
  // A step stands behind everything that it hides, so one pass finds all.
  for (const one of STEPS)
    if (BEFORE[one].some((before) => before === step || hiding.has(before))) hiding.add(one);
  return [...hiding];
}

/** Left out: not proved, and hidden by something that is done. */
export const skippedOf = (done: Steps): Steps =>
  STEPS.filter((step) => !done.includes(step) && hidersOf(step).some((one) => done.includes(one)));

/** What went wrong unseen, and what of it the air test can meet: balls and bridge lie past the ports that the nozzle sits on. */
const IN_THE_CASE = {
  lip: { pistonSeal: { severity: 0.7, circuit: 'forward' } },
  rings: { sealingRings: { severity: 0.2, circuit: 'forward' } },
} as const satisfies Partial<Record<Step, FaultSet>>;
const UNDER_THE_BODY = {
  balls: { openPort: { severity: 0.8, circuit: 'forward' } },
  bridge: crackFault(REFERENCE_CRACK_MM),
} as const satisfies Partial<Record<Step, FaultSet>>;
/** Filled cold to MAX and left there [L]. */
const FILLED_COLD_L = 0.6;

const carWith = (faults: Partial<Record<Step, FaultSet>>, skipped: Steps) =>
  makeCar({ faults: Object.assign({}, ...skipped.map((step) => faults[step] ?? {})) as FaultSet });

/** What the tester holds of its supply at the forward circuit's port of the case [%]. */
export const airAfter = (skipped: Steps): number =>
  100 * airHeld(carWith(IN_THE_CASE, skipped).plant, 'forward');

/** A clutch at its own tap in its own range [kPa], and whether it pulls away firmly. */
export interface TapAfter {
  readonly kPa: number;
  readonly pulls: boolean;
}
/** The first drive, and the stick after it. */
export interface DriveAfter {
  readonly cold: Readonly<Record<'forward' | 'reverse', TapAfter>>;
  readonly hot: Readonly<Record<'forward' | 'reverse', TapAfter>>;
  /** From the middle of the marks, in the window [mm]. */
  readonly stickMm: number;
}

export function driveAfter(skipped: Steps): DriveAfter {
  const car = carWith({ ...IN_THE_CASE, ...UNDER_THE_BODY }, skipped);
  const tap = (circuit: Circuit, tempC: number): TapAfter => ({
    kPa: readingOf(car, { tempC, circuit }).clutches[circuit].kPa,
    pulls:
      readingOf(car, { tempC, circuit, point: 'load' }).clutches[circuit].holdsNm >=
      needs.firm.torqueNm,
  });
  const both = (tempC: number) => ({
    forward: tap('forward', tempC),
    reverse: tap('reverse', tempC),
  });
  return {
    cold: both(COLD_C),
    hot: both(HOT_C),
    stickMm: levelOf({
      offL: skipped.includes('level') ? FILLED_COLD_L : 0,
      tempC: WINDOW_C.middle,
      engineRpm: training.testPoints.idle.engineRpm,
      place: 'flat',
    }).stickMm,
  };
}
/** Whether it pulls in both ranges. */
export const pullsIn = ({ forward, reverse }: DriveAfter['cold']): boolean =>
  forward.pulls && reverse.pulls;
