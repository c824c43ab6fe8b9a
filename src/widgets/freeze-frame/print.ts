/** This simulation's own words for its readings. */
import { words as names } from '../../car/words.en.ts';
import { roughly, type Drive, type Line } from '../../cases/frame-list.ts';
import { isFault, type Name } from '../../diagnosis/hypotheses.ts';
import { format, formatNumber, printer } from '../../quantity/print.ts';
import { count, pressure, seconds, speed, temperature, times } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { FreezeFrameModel } from './model.ts';
import { words } from './words.en.ts';

export const nameOf = (name: Name): string => (isFault(name) ? names.faults[name] : words.healthy);

export const printBits = (bits: number): string => formatNumber(bits, times, 'si');
export const printCount = (value: number): string => format(value, count, 'si');

/** What a line reads on a drive. */
export function readingOf(job: Drive, line: Line, system: UnitSystem): string {
  const { first, reverse, tempC } = job;
  const soon = roughly(job, 'time') === 0;
  const print = printer(system);
  const { readings } = words;
  if (line === 'other') return reverse ? readings.other : readings.noOther;
  if (first === null) return line === 'code' ? readings.noCode : readings.noFrame;
  switch (line) {
    case 'code':
      return readings.code;
    case 'temp':
      return readings.temp({ temp: print(tempC, temperature) });
    case 'time':
      return (soon ? readings.timeSoon : readings.timeLater)({
        after: print(first.after, seconds),
      });
    case 'speeds':
      return readings.speeds({
        engine: print(first.engine, speed),
        turbine: print(first.turbine, speed),
      });
    case 'output':
      return readings.output({ output: print(first.output, speed) });
    case 'command':
      return readings.command({ command: print(first.command, pressure) });
  }
}

/** What stands under a line's name: its worth, its reading, or that it is gone. */
export function underLine(model: FreezeFrameModel, line: Line, system: UnitSystem): string {
  if (model.read.value.includes(line)) return readingOf(model.job.value, line, system);
  if (model.givens.cleared.value && line !== 'code') return words.erased;
  return words.worth({ bits: printBits(model.worth(line)) });
}
