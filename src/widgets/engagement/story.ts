/** What a run came to, in the reader's words and units. */
import { words as names } from '../../car/words.en.ts';
import { illustrativeSettings, trainingStory } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds, speed, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { COLD_C } from '../../car/cold-and-hot.ts';
import type { EngagementModel, Run, SolvedRun } from './model.ts';
import { words } from './words.en.ts';

/** When the turbine stopped at a temperature, if it did. */
export function stopping(tempC: number, stoppedAfter: number | null, system: UnitSystem): string {
  const print = printer(system);
  const temp = print(tempC, temperature);
  if (stoppedAfter === null) return words.run.never({ temp });
  const late = stoppedAfter > illustrativeSettings.engagementTime;
  return words.run[late ? 'late' : 'stops']({ temp, time: print(stoppedAfter, seconds) });
}

export function outcomeOf(tempC: number, run: Run, system: UnitSystem): string {
  const stopped = stopping(tempC, run.solved.stoppedAfter, system);
  if (!run.codeStored) return stopped;
  return `${stopped} ${run.parked ? words.run.park : words.run.code}`;
}

/** The numbers at the moment the controller looks: turbine speed, pressure had and wanted. */
export function atTheCheck({ solved }: SolvedRun, system: UnitSystem): string {
  const print = printer(system);
  const { trace } = solved;
  const check = trainingStory.select + illustrativeSettings.engagementTime;
  const row = trace.time.findIndex((time) => time >= check - 1e-9);
  return words.atTheCheck({
    after: print(illustrativeSettings.engagementTime, seconds),
    turbine: print(trace.turbineRpm[row] ?? 0, speed),
    has: print((trace.clutchPressure[row] ?? 0) / 1e3, pressure),
    wants: print((trace.clutchCommand[row] ?? 0) / 1e3, pressure),
  });
}

/** The sentence under the picture. At one temperature the two runs are one, and it is told once. */
export const says = ({ givens, cold, hot }: EngagementModel, system: UnitSystem): string =>
  [
    words.fault({ fault: names.faults[givens.fault.value] }),
    outcomeOf(COLD_C, cold.value, system),
    ...(givens.temp.value === COLD_C ? [] : [outcomeOf(givens.temp.value, hot.value, system)]),
  ].join(' ');
