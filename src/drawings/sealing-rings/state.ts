import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

export interface SealingRingsState {
  /** 0 new, 1 worn out: widens the drawn gap. */
  wear: number;
  /** Share of 1000 kPa between the rings. */
  pressure: number;
  temp: Temp;
  /** L/min past both rings, and what goes on to the clutch: nothing once it is full. */
  leak: number;
  onward: number;
  labels: { pressure: string; leak: string; gap: string };
}

export const sealingRingsExample: SealingRingsState = {
  wear: 0,
  pressure: 0.4,
  temp: 'hot',
  leak: 0.6,
  onward: 0,
  labels: { pressure: '400 kPa', leak: '0.6 L/min', gap: '0.025 mm' },
};

export const describeSealingRings = ({ labels, temp }: SealingRingsState): string =>
  [words.describe.carry(labels), words.describe.lose[temp](labels)].join(' ');
