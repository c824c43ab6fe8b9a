import {
  afterSelection,
  engage,
  happened,
  makeCar,
  oneFault,
  REFERENCE_CRACK_MM,
  soundCar,
  traceAt,
} from '../../car/index.ts';
import {
  faultAmount,
  illustrativeSettings,
  training,
  trainingStory,
  type Engagement,
  type EngagementEventName,
} from '../../engine/index.ts';
import { milliseconds, ratio as gearRatio } from '../../quantity/part-quantities.ts';
import { percent, seconds, speed } from '../../quantity/quantities.ts';
import { index, kiloPascals, type EngineNumber, type EngineNumbers } from './entry.ts';

const limits = illustrativeSettings;
const { forward: first, reverse, high: third } = training.drive.ratios;
const rpm = (value: number, what: string): EngineNumber => ({ value, quantity: speed, what });
const time = (value: number, what: string): EngineNumber => ({ value, quantity: seconds, what });
const ratio = (value: number, what: string): EngineNumber => ({
  value,
  quantity: gearRatio,
  what,
});
const toothCount = 60;

/** Everything below is in seconds after selection, as src/car counts them. */
const BRAKE_OFF = trainingStory.brakeOff - trainingStory.select;
const timeOf = (run: Engagement, name: EngagementEventName): number => {
  const after = afterSelection(run, name);
  if (after === null) throw new Error(`The lesson says that this run has "${name}".`);
  return after;
};
const hot = engage(makeCar({ crackMm: REFERENCE_CRACK_MM }), { tempC: 100 });
const raisedAt = timeOf(hot, 'pressure raised');
const storedAt = timeOf(hot, 'code stored');
const seen = (column: 'turbineRpm' | 'outputRpm' | 'clutchPressure' | 'clutchCommand', t: number) =>
  traceAt(hot, column, t);
/** A gear that is slow in hard frost with nothing wrong. */
const FROST_C = -20;
const frost = engage(soundCar, { tempC: FROST_C });

/** Readings as a display shows them, so that a reader's own sum comes out. */
const stored = {
  turbine: Math.round(seen('turbineRpm', storedAt)),
  output: Math.round(seen('outputRpm', storedAt)),
  ratio: first,
};

const liar = engage(makeCar({ faults: oneFault('turbineSensor', 100) }), { tempC: 20 });

/** Twenty healthy cold drives with a noisy sensor: on how many does the controller store a code? */
const DRIVES = 20;
const NOISE = 100;
const falseCodes = (wait: number): number =>
  Array.from({ length: DRIVES }, (_, i) =>
    engage(soundCar, {
      tempC: 20,
      sensor: { resolutionRpm: 10, noiseRpm: NOISE, seed: i + 1 },
      settings: { ...limits, ratioTime: wait },
    }),
  ).filter((run) => happened(run, 'code stored')).length;

const limitAt = (turbine: number): number =>
  Math.max(limits.ratioSlipRpm, limits.ratioSlipShare * turbine);
/** The readings of the exercises: chosen, nobody's result. */
const sums = {
  reverse: { turbine: 900, output: 250, ratio: reverse },
  third: { turbine: 3200, output: 2060, ratio: third },
};
const slipOf = (s: { turbine: number; output: number; ratio: number }): number =>
  s.turbine - s.ratio * s.output;

export const whatSlipIsNumbers: EngineNumbers = {
  'slip-ratio-first': ratio(first, 'ratio of first'),
  'slip-ratio-reverse': ratio(reverse, 'ratio of reverse'),
  'slip-ratio-third': ratio(third, 'ratio of third'),
  'slip-check-limit': rpm(limits.engagementSlipRpm, 'engagement check'),
  'slip-check-time': time(limits.engagementTime, 'engagement check'),
  'slip-limit-floor': rpm(limits.ratioSlipRpm, 'ratio check, least'),
  'slip-limit-share': {
    value: 100 * limits.ratioSlipShare,
    quantity: percent,
    what: 'ratio check, share of turbine speed',
  },
  'slip-limit-time': time(limits.ratioTime, 'ratio check'),
  'slip-raise': {
    value: 100 * (limits.pressureRaise - 1),
    quantity: percent,
    what: 'what the first failed check adds',
  },
  'slip-cycle': { value: limits.sample * 1e3, quantity: milliseconds, what: 'controller cycle' },
  'slip-limit-meets': rpm(
    limits.ratioSlipRpm / limits.ratioSlipShare,
    'turbine speed where the share overtakes the floor',
  ),
  'slip-turbine-stored': rpm(stored.turbine, 'turbine at the code'),
  'slip-output-stored': rpm(stored.output, 'output at the code'),
  'slip-expected-stored': rpm(first * stored.output, 'first times the output at the code'),
  'slip-stored': rpm(slipOf(stored), 'slip at the code'),
  'slip-turbine-check': rpm(
    seen('turbineRpm', limits.engagementTime),
    'turbine at the engagement check, hot crack',
  ),
  'slip-stopped-frost': time(
    frost.stoppedAfter ?? Number.NaN,
    `turbine stops, healthy, ${FROST_C} °C`,
  ),
  'slip-raised-after': time(raisedAt - BRAKE_OFF, 'brake off to first failed check'),
  'slip-stored-after': time(storedAt - BRAKE_OFF, 'brake off to code'),
  'slip-had-before': kiloPascals(seen('clutchPressure', raisedAt - 0.02), 'before the raise'),
  'slip-command-before': kiloPascals(seen('clutchCommand', raisedAt - 0.02), 'before the raise'),
  'slip-had-after': kiloPascals(seen('clutchPressure', raisedAt + 0.3), 'after the raise'),
  'slip-command-after': kiloPascals(seen('clutchCommand', raisedAt + 0.3), 'after the raise'),
  'slip-teeth': index(toothCount, 'teeth of the example wheel'),
  'slip-tooth-step': rpm(
    60 / (toothCount * limits.sample),
    'what one tooth more or less is worth when teeth are counted for one cycle',
  ),
  'slip-noise': rpm(NOISE, 'noise of the example sensor'),
  'slip-drives': index(DRIVES, 'healthy drives with a noisy sensor'),
  'slip-short-wait': { value: 10, quantity: milliseconds, what: 'a wait of one cycle' },
  'slip-false-short': index(falseCodes(limits.sample), 'false codes with a wait of one cycle'),
  'slip-false-long': index(falseCodes(limits.ratioTime), 'false codes with the full wait'),
  'slip-false-reading': rpm(faultAmount('turbineSensor', 1), 'false reading at rest'),
  'slip-liar-stored-after': time(
    timeOf(liar, 'code stored') - BRAKE_OFF,
    'brake off to code, good clutch, false sensor',
  ),
  'slip-reverse-turbine': rpm(sums.reverse.turbine, 'exercise'),
  'slip-reverse-output': rpm(sums.reverse.output, 'exercise'),
  'slip-reverse-expected': rpm(reverse * sums.reverse.output, 'exercise'),
  'slip-reverse': rpm(slipOf(sums.reverse), 'exercise'),
  'slip-reverse-limit': rpm(limitAt(sums.reverse.turbine), 'exercise'),
  'slip-third-turbine': rpm(sums.third.turbine, 'exercise'),
  'slip-third-output': rpm(sums.third.output, 'exercise'),
  'slip-third-expected': rpm(third * sums.third.output, 'exercise'),
  'slip-third': rpm(slipOf(sums.third), 'exercise'),
  'slip-third-limit': rpm(limitAt(sums.third.turbine), 'exercise'),
};
