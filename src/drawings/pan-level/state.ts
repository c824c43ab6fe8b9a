import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

export interface PanLevelState {
  /** Above the mouth of the pick-up, in the middle of the pan and at the pick-up [mm]. */
  middleMm: number;
  mouthMm: number;
  /** The marks on the stick and the lowest turning part, above the mouth [mm]. */
  minMm: number;
  maxMm: number;
  gearsMm: number;
  /** Share of air in what the pump draws, 0 to 1. */
  air: number;
  temp?: Temp | undefined;
  /** How high a thermometer beside the pan stands, 0 to 1; none without it. */
  thermometer?: number | undefined;
  /** Another level of the same fluid, drawn as a line with its words [mm]. */
  other?: { mm: number; words: string } | undefined;
  labels: {
    /** Beside the surface, or at the thermometer. */
    level: string;
    air: string;
  };
}

export const panLevelExample: PanLevelState = {
  middleMm: 13.4,
  mouthMm: 13.4,
  minMm: 8.4,
  maxMm: 18.4,
  gearsMm: 23,
  air: 0,
  labels: { level: '75 °C', air: '0 %' },
};

export function describePanLevel(s: PanLevelState): string {
  const { stick, pickUp, gears, other } = words.describe;
  const stickMm = 2 * s.middleMm - s.mouthMm;
  return [
    stick[stickMm < s.minMm ? 'under' : stickMm > s.maxMm ? 'over' : 'between'](s.labels),
    ...(s.other ? [other({ level: s.other.words })] : []),
    s.air > 0 ? pickUp.air(s.labels) : pickUp.covered,
    gears[s.middleMm > s.gearsMm ? 'dip' : 'dry'],
  ].join(' ');
}
