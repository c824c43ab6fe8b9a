import {
  jobOf,
  LINES,
  LISTED,
  sameAs,
  sharesOf,
  storedAt,
  storesFirst,
  type Line,
} from '../cases/frame-list.ts';
import { asGoodAs } from '../cases/talk-list.ts';
import { training } from '../engine/index.ts';
import { count, degC, kPa, ratio, rpm, seconds, type Entries } from './entry.ts';

const [COLD_C, HOT_C] = [20, 100];
/** The car of the lesson: a split seal, halfway between its mildest and its worst, hot. */
const job = jobOf('transferSeal', 50, HOT_C);
const frame = job.first;
if (frame === null) throw new Error('The car of the lesson stores a code.');

const openWith = (read: readonly Line[]) => asGoodAs(sharesOf(sameAs(job, read)));
const hot = storedAt(HOT_C, COLD_C);
const first = training.drive.ratios.forward;

export const codesAreQuestions: Entries = {
  'codes-faults': count(LISTED.length - 1, 'faults of the list'),
  'codes-stores': count(storesFirst().length, 'faults that can store the code of first gear'),
  'codes-open-code': count(openWith(['code']), 'as open as so many names, code of first read'),
  'codes-open-frame': count(openWith(LINES), 'as open as so many names, all lines read'),
  'codes-hot': degC(HOT_C, 'drive of the lesson'),
  'codes-cold': degC(COLD_C, 'bay of the lesson'),
  'codes-cars-hot': count(hot.cars, 'cars that store the code of first hot'),
  'codes-cars-silent': count(hot.silent, 'of them, cars that store nothing cold'),
  'codes-after': seconds(frame.after, 'code of the lesson, after selection'),
  'codes-engine': rpm(frame.engine, 'engine in the frame of the lesson'),
  'codes-turbine': rpm(frame.turbine, 'turbine in the frame of the lesson'),
  'codes-output': rpm(frame.output, 'output in the frame of the lesson'),
  'codes-command': kPa(frame.command, 'command in the frame of the lesson'),
  'codes-pressure': kPa(frame.pressure, 'in the clutch at that instant, which no frame holds'),
  'codes-ratio': ratio(first, 'first gear'),
  'codes-worked-slip': rpm(frame.turbine - first * frame.output, 'slip in the frame of the lesson'),
};
