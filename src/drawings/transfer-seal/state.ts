import { hairs } from '../../quantity/hairs/hairs.ts';
import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

export interface TransferSealState {
  /** 0 draws the seal whole. */
  crackMm: number;
  /** Share of 1000 kPa inside the passage. */
  pressure: number;
  temp: Temp;
  /** L/min: what comes up to the seal, and what of it is lost there. */
  feed: number;
  leak: number;
  labels: { pressure: string; leak: string; width: string };
}

export const transferSealExample: TransferSealState = {
  crackMm: 0,
  pressure: 0.4,
  temp: 'cold',
  feed: 0.6,
  leak: 0,
  labels: { pressure: '400 kPa', leak: '0 L/min', width: '0 mm' },
};

export function describeTransferSeal({ crackMm, temp, labels }: TransferSealState): string {
  const { split, loses, whole, carries } = words.describe;
  return crackMm > 0
    ? [split({ width: labels.width, hairs: hairs(crackMm) }), loses[temp](labels)].join(' ')
    : [whole, carries[temp](labels)].join(' ');
}
