import { format, formatNumber } from '../../quantity/print.ts';
import { ratio } from '../../quantity/part-quantities.ts';
import { speed } from '../../quantity/quantities.ts';
import { words } from './words.en.ts';

export interface SpeedSensorsState {
  turbineRpm: number;
  outputRpm: number;
  /** Turbine turns for one output turn in the gear that is asked for. */
  ratio: number;
}

export const speedSensorsExample: SpeedSensorsState = {
  turbineRpm: 1500,
  outputRpm: 300,
  ratio: 4,
};

/** All that the drawing prints, by one printer: with its unit, or as a bare number in a sum. */
export function printed(s: SpeedSensorsState, print: typeof format | typeof formatNumber) {
  const wanted = s.ratio * s.outputRpm;
  return {
    turbine: print(s.turbineRpm, speed, 'si'),
    output: print(s.outputRpm, speed, 'si'),
    ratio: formatNumber(s.ratio, ratio, 'si'),
    wanted: print(wanted, speed, 'si'),
    slip: print(s.turbineRpm - wanted, speed, 'si'),
  };
}

export const describeSpeedSensors = (s: SpeedSensorsState): string =>
  words.describe(printed(s, format));
