import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

export interface PumpRegulatorState {
  /** Line pressure as a share of 1000 kPa. */
  line: number;
  temp: Temp;
  /** L/min. */
  flows: { pump: number; toClutches: number; leftOver: number };
  labels: { line: string; pump: string; leftOver: string };
}

export const pumpRegulatorExample: PumpRegulatorState = {
  line: 0.6,
  temp: 'hot',
  flows: { pump: 9.5, toClutches: 4.5, leftOver: 5 },
  labels: { line: '600 kPa', pump: '9.5 L/min', leftOver: '5 L/min' },
};

export function describePumpRegulator({ flows, labels, temp }: PumpRegulatorState): string {
  const { draws, open, shut } = words.describe;
  return [draws[temp](labels), (flows.leftOver > 0.02 ? open : shut)(labels)].join(' ');
}
