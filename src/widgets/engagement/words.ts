import { words as names } from '../../car/words.en.ts';
import { illustrativeSettings, trainingStory } from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { pressure, seconds, speed, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { EngagementModel, Run } from './model.ts';

const after = (time: number, system: UnitSystem): string => format(time, seconds, system);

/** What one run came to, in one sentence. */
export function outcomeOf(run: Run, system: UnitSystem): string {
  const { solved } = run;
  const stopped =
    solved.stoppedAfter === null
      ? 'the turbine never stops'
      : `the turbine stops after ${after(solved.stoppedAfter, system)}`;
  const late =
    solved.stoppedAfter !== null && solved.stoppedAfter > illustrativeSettings.engagementTime
      ? ', too late for the check'
      : '';
  const end = run.codeStored
    ? run.parked
      ? '; code stored, and the car selects Park by itself'
      : '; code stored'
    : '';
  return `${stopped}${late}${end}`;
}

/** The numbers at the moment the controller looks: turbine speed, pressure had and wanted. */
export function atTheCheck({ solved }: Run, system: UnitSystem): string {
  const { trace } = solved;
  const check = trainingStory.select + illustrativeSettings.engagementTime;
  const row = trace.time.findIndex((time) => time >= check - 1e-9);
  const turbine = format(trace.turbineRpm[row] ?? 0, speed, system);
  const has = format((trace.clutchPressure[row] ?? 0) / 1e3, pressure, system);
  const wants = format((trace.clutchCommand[row] ?? 0) / 1e3, pressure, system);
  return `When the controller looked, ${after(illustrativeSettings.engagementTime, system)} after selection, the turbine turned at ${turbine}. The clutch had ${has} of the ${wants} wanted.`;
}

/** The sentence under the picture. */
export function says(model: EngagementModel, system: UnitSystem): string {
  const { givens, cold, hot } = model;
  const name = names.faults[givens.fault.value];
  return `${name}. At ${format(20, temperature, system)} ${outcomeOf(cold.value, system)}. At ${format(givens.temp.value, temperature, system)} ${outcomeOf(hot.value, system)}.`;
}
