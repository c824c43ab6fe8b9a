import type { EngagementRead } from './measure.ts';
import { middle } from './stop-time.ts';

/** A reading in the form that diagnosis takes, keys and units as there. */
export type DiagnosisReading =
  | {
      readonly test: 'stopTime';
      readonly range: 'drive' | 'reverse';
      readonly temperature_C: number;
      /** Time after selection [s]; null: not in 2.5 s. */
      readonly value: number | null;
    }
  | {
      readonly test: 'takeoffSlip';
      readonly range: 'drive' | 'reverse';
      readonly temperature_C: number;
      /** [rpm] */
      readonly value: number;
    };

/** Temperatures that diagnosis has a column for [°C]. */
export const BANDS = { frost: [-5, 5], cold: [10, 30], hot: [85, 105] } as const;
export type Band = keyof typeof BANDS;

/** The band that a temperature is in; null between them. */
export const bandOf = (tempC: number): Band | null =>
  (Object.keys(BANDS) as Band[]).find(
    (band) => tempC >= BANDS[band][0] && tempC <= BANDS[band][1],
  ) ?? null;

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

/**
 * The readings of a log for diagnosis: `stopTime` in any of its three bands, `takeoffSlip` hot. What has no temperature, lies
 * between the bands, or began without a range in the log is no such reading and is left out.
 */
export function diagnosisReadings(
  engagements: readonly EngagementRead[],
): readonly DiagnosisReading[] {
  return engagements.flatMap(({ selection: { range }, tempC, stop, slip }) => {
    if (range === 'unknown' || tempC === null) return [];
    const band = bandOf(tempC);
    if (band === null) return [];
    const conditions = { range, temperature_C: rounded(tempC, 1) };
    const readings: DiagnosisReading[] = [];
    if (stop.kind === 'stopped' || stop.kind === 'notStopped') {
      const value = stop.kind === 'stopped' ? rounded(middle(stop.after), 2) : null;
      readings.push({ test: 'stopTime', ...conditions, value });
    }
    if (slip.kind === 'measured' && band === 'hot') {
      readings.push({ test: 'takeoffSlip', ...conditions, value: rounded(slip.peak, 0) });
    }
    return readings;
  });
}
