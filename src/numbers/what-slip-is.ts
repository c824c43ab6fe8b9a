import {
  afterSelection,
  engage,
  happened,
  makeCar,
  oneFault,
  REFERENCE_CRACK_MM,
  soundCar,
  traceAt,
} from '../car/index.ts';
import {
  faultAmount,
  illustrativeSettings as limits,
  training,
  trainingStory,
  type Engagement,
  type EngagementEventName,
} from '../engine/index.ts';
import { record } from '../car/record.ts';
import { readRecorded, type Recording, type RecordingId } from '../car/recordings.ts';
import { replay } from '../car/replay.ts';
import { count, entry, kPa, percent, ratio, rpm, seconds, type Entries } from './entry.ts';

const { forward: first, reverse, high: third } = training.drive.ratios;
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
const seen = (column: 'turbineRpm' | 'outputRpm', t: number): number => traceAt(hot, column, t);
const pressureSeen = (column: 'clutchPressure' | 'clutchCommand', t: number, what: string) =>
  kPa(traceAt(hot, column, t) / 1e3, what);
const liar = engage(makeCar({ faults: oneFault('turbineSensor', 100) }), { tempC: 20 });
const falseRpm = faultAmount('turbineSensor', 1);

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

/** What the wait costs and brings, with a sensor as good as the lesson's simulation has. */
const recorded = (id: RecordingId): Recording => readRecorded(id, record(id));
const replayed = (one: Recording, wait: number) =>
  replay(one, { ...limits, ratioTime: wait }, { noiseRpm: 10, resolutionRpm: 10 });
const halfWait = limits.ratioTime / 2;
const cracked = recorded('crack25');
const codeAfter = (wait: number): number => {
  const after = replayed(cracked, wait).codeAfter;
  if (after === null) throw new Error('The lesson says that the crack brings a code.');
  return after;
};

interface Seen {
  readonly turbine: number;
  readonly output: number;
  readonly ratio: number;
}
/** The model's section 8. */
const slipOf = (s: Seen): number => s.turbine - s.ratio * s.output;
const slip = (s: Seen, what: string) => rpm(slipOf(s), what);
const limitAt = (turbine: number): number =>
  Math.max(limits.ratioSlipRpm, limits.ratioSlipShare * turbine);

/** Readings as a display shows them, so that a reader's own sum comes out. */
const stored: Seen = {
  turbine: Math.round(seen('turbineRpm', storedAt)),
  output: Math.round(seen('outputRpm', storedAt)),
  ratio: first,
};
/** The readings of the exercises: chosen, nobody's result. */
const sums = {
  reverse: { turbine: 900, output: 250, ratio: reverse },
  third: { turbine: 3200, output: 2060, ratio: third },
} as const satisfies Record<string, Seen>;

export const whatSlipIs: Entries = {
  'slip-ratio-first': ratio(first, 'ratio of first'),
  'slip-ratio-reverse': ratio(reverse, 'ratio of reverse'),
  'slip-ratio-third': ratio(third, 'ratio of third'),
  'slip-check-limit': rpm(limits.engagementSlipRpm, 'engagement check'),
  'slip-limit-floor': rpm(limits.ratioSlipRpm, 'ratio check, least'),
  'slip-limit-share': percent(100 * limits.ratioSlipShare, 'ratio check, share of turbine speed'),
  'slip-limit-time': seconds(limits.ratioTime, 'ratio check'),
  'slip-limit-meets': rpm(
    limits.ratioSlipRpm / limits.ratioSlipShare,
    'turbine speed where the share overtakes the floor',
  ),
  'slip-raise': percent(100 * (limits.pressureRaise - 1), 'what the first failed check adds'),
  'slip-cycle': entry('milliseconds', limits.sample * 1e3, 'controller cycle'),
  'slip-turbine-stored': rpm(stored.turbine, 'turbine at the code'),
  'slip-output-stored': rpm(stored.output, 'output at the code'),
  'slip-expected-stored': rpm(first * stored.output, 'first times the output at the code'),
  'slip-stored': slip(stored, 'slip at the code'),
  'slip-raised-after': seconds(raisedAt - BRAKE_OFF, 'brake off to first failed check'),
  'slip-stored-after': seconds(storedAt - BRAKE_OFF, 'brake off to code'),
  'slip-had-before': pressureSeen('clutchPressure', raisedAt - 0.02, 'before the raise'),
  'slip-command-before': pressureSeen('clutchCommand', raisedAt - 0.02, 'before the raise'),
  'slip-had-after': pressureSeen('clutchPressure', raisedAt + 0.3, 'after the raise'),
  'slip-command-after': pressureSeen('clutchCommand', raisedAt + 0.3, 'after the raise'),
  'slip-teeth': count(toothCount, 'teeth of the example wheel'),
  'slip-tooth-step': rpm(
    60 / (toothCount * limits.sample),
    'what one tooth more or less is worth when teeth are counted for one cycle',
  ),
  'slip-noise': rpm(NOISE, 'noise of the example sensor'),
  'slip-drives': count(DRIVES, 'healthy drives with a noisy sensor'),
  'slip-short-wait': entry('milliseconds', limits.sample * 1e3, 'a wait of one cycle'),
  'slip-false-short': count(falseCodes(limits.sample), 'false codes with a wait of one cycle'),
  'slip-false-long': count(falseCodes(limits.ratioTime), 'false codes with the full wait'),
  'slip-half-wait': seconds(halfWait, 'ratio check, half the wait'),
  'slip-hurry-over': seconds(
    replayed(recorded('hurry'), halfWait).longestOver,
    'driver in a hurry, healthy: time over the limit',
  ),
  'slip-code-sooner': seconds(
    codeAfter(limits.ratioTime) - codeAfter(halfWait),
    'crack of the course: how much sooner half the wait brings the code',
  ),
  'slip-false-reading': rpm(falseRpm, 'false reading at rest'),
  'slip-liar-stored-after': seconds(
    timeOf(liar, 'code stored') - BRAKE_OFF,
    'brake off to code, good clutch, false sensor',
  ),
  'slip-reverse-turbine': rpm(sums.reverse.turbine, 'exercise'),
  'slip-reverse-output': rpm(sums.reverse.output, 'exercise'),
  'slip-reverse-expected': rpm(reverse * sums.reverse.output, 'exercise'),
  'slip-reverse': slip(sums.reverse, 'exercise'),
  'slip-reverse-limit': rpm(limitAt(sums.reverse.turbine), 'exercise'),
  'slip-third-turbine': rpm(sums.third.turbine, 'exercise'),
  'slip-third-output': rpm(sums.third.output, 'exercise'),
  'slip-third-expected': rpm(third * sums.third.output, 'exercise'),
  'slip-third': slip(sums.third, 'exercise'),
  'slip-third-limit': rpm(limitAt(sums.third.turbine), 'exercise'),
};
