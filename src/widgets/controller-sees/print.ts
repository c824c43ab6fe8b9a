/** Recordings and what became of them, as printed. */
import { recipes, type RecordingId } from '../../car/recordings.ts';
import { format, printer } from '../../quantity/print.ts';
import { count, length, seconds, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Judged, SeesModel } from './model.ts';
import { words } from './words.en.ts';

export const crackOf = (id: RecordingId, system: UnitSystem): string =>
  format(recipes[id].crackMm ?? 0, length, system);

export const nameOf = (id: RecordingId, system: UnitSystem): string =>
  words.recordings[id]({
    temp: format(recipes[id].tempC, temperature, system),
    crack: crackOf(id, system),
  });

/** The first failed check, and the code. */
export function failureOf({ failed, codeAfter }: Judged, system: UnitSystem): string {
  if (!failed) return words.failed.none;
  const print = printer(system);
  const after = print(failed.after, seconds);
  const { code, noCode } = words.failed[failed.check];
  return codeAfter === null ? noCode({ after }) : code({ after, code: print(codeAfter, seconds) });
}

/** One recording and its verdict. */
export const verdictOf = (one: Judged, system: UnitSystem): string =>
  [
    words.says({ recording: nameOf(one.id, system), verdict: words.verdicts[one.verdict] }),
    failureOf(one, system),
  ].join(' ');

/** Each healthy recording that fails a check, by name. */
export const alarmsOf = ({ falseAlarms }: SeesModel, system: UnitSystem): string =>
  falseAlarms.value.map((id) => words.falseAlarm({ recording: nameOf(id, system) })).join(' ') ||
  words.noFalseAlarm;

export function score({ all, caught, falseAlarms }: SeesModel, system: UnitSystem): string {
  const shown = (ids: readonly unknown[]) => printer(system)(ids.length, count);
  const healthy = all.value.filter((one) => one.healthy);
  const faulty = all.value.filter((one) => !one.healthy);
  return [
    words.caught({ caught: shown(caught.value), faulty: shown(faulty) }),
    words.falseAlarms({ alarms: shown(falseAlarms.value), healthy: shown(healthy) }),
  ].join(' ');
}
