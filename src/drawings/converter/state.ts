import { format } from '../../quantity/print.ts';
import { speed } from '../../quantity/quantities.ts';
import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

export interface ConverterState {
  engineRpm: number;
  turbineRpm: number;
  /** The one-way clutch holds the stator while the turbine is slow. */
  statorHolds: boolean;
  temp?: Temp | undefined;
}

export const converterExample: ConverterState = {
  engineRpm: 700,
  turbineRpm: 0,
  statorHolds: true,
  temp: 'hot',
};

/** Below this difference [rpm] hardly any oil goes round. */
export const ALIKE_RPM = 20;

export function describeConverter({ engineRpm, turbineRpm, statorHolds }: ConverterState): string {
  const { turns, flung, alike, held, free } = words.describe;
  const print = (rpm: number) => format(rpm, speed, 'si');
  return [
    turns({ engine: print(engineRpm), turbine: print(turbineRpm) }),
    engineRpm - turbineRpm > ALIKE_RPM ? flung : alike,
    statorHolds ? held : free,
  ].join(' ');
}
