import { format } from '../../quantity/print.ts';
import { percent } from '../../quantity/quantities.ts';
import { clamp01, type Temp } from '../scale.ts';
import { words } from './words.en.ts';

export interface SpoolValveState {
  /** 0: clutch open to exhaust; 0.5: both ports covered; 1: clutch open to line. */
  position: number;
  /** Shares of 1000 kPa. */
  pressures: { line: number; clutch: number; command: number };
  /** L/min through the port that is open. */
  flow: number;
  temp?: Temp | undefined;
  labels: { line: string; clutch: string; command: string };
}

export const spoolValveExample: SpoolValveState = {
  position: 0.8,
  pressures: { line: 0.6, clutch: 0.38, command: 0.45 },
  flow: 2,
  labels: { line: '600 kPa', clutch: '380 kPa', command: '450 kPa' },
};

/** From -1, wide open to exhaust, to 1, wide open to line. */
export const openOf = ({ position }: SpoolValveState): number => (clamp01(position) - 0.5) * 2;
/** Up to here both ports are covered. */
export const COVERED = 0.05;

export function describeSpoolValve(s: SpoolValveState): string {
  const { pushes, feeds, drains, covers } = words.describe;
  const open = openOf(s);
  const share = format(Math.abs(open) * 100, percent, 'si');
  const doing =
    Math.abs(open) <= COVERED ? covers : open > 0 ? feeds({ share }) : drains({ share });
  return [pushes(s.labels), doing].join(' ');
}
