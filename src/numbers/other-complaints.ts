import { complaintOf } from '../cases/complaints.ts';
import { readings } from '../car/complaint-readings.ts';
import { minutesFrom } from '../cases/split-list.ts';
import { entry, kPa, type Entries } from './entry.ts';

const { seconds, pressure } = readings();
const { hardLip, frost } = seconds.lateCold.reverse;
const { line, tap } = pressure.noReverse;
const late = complaintOf('lateCold');
const of = (values: readonly number[], place = 0): number => values[place] ?? Number.NaN;
const time = (value: number, what: string) => entry('seconds', value, what);
const minutes = (value: number, what: string) => entry('minutes', value, what);
const begunWith = (check: string) =>
  minutes(minutesFrom(late, check, late.causes), `late cold, to one name if begun with ${check}`);

export const otherComplaints: Entries = {
  'other-lip-drive': time(of(hardLip), 'hard lip, Drive, 0 °C'),
  'other-lip-reverse': time(of(hardLip, 1), 'the same car, Reverse, 0 °C'),
  'other-sound-drive': time(of(frost), 'sound car, Drive, 0 °C'),
  'other-begun-twice': begunWith('twice'),
  'other-begun-level': begunWith('level'),
  'other-reverse-line': kPa(of(line.pack), 'line in Reverse, boosted, hot idle'),
  'other-drive-line': kPa(of(line.boost), 'line in Reverse with the boost lost'),
  'other-reverse-tap': kPa(of(tap.pack), 'reverse tap of a sound circuit, hot idle'),
  'other-open-tap': kPa(of(tap.leak), 'reverse tap with a plug missing, hot idle'),
};
