/** What a speed sensor makes of a true speed. */
export interface SpeedSensor {
  /** Smallest step it can tell [rpm]; 0 for exact. */
  readonly resolutionRpm: number;
  /** Largest error of one reading [rpm]; 0 for none. */
  readonly noiseRpm: number;
  /** Starts the noise: the same seed gives the same readings. */
  readonly seed: number;
}

/** A sensor that reads the true speed. */
export const exactSensor: SpeedSensor = { resolutionRpm: 0, noiseRpm: 0, seed: 1 };

/** An even number in [0, 1) for a seed and a count: a hash, so that reading k needs no reading before it. */
function even(seed: number, count: number): number {
  let x = (Math.imul(seed | 0, 0x9e3779b1) ^ Math.imul(count + 1, 0x85ebca6b)) >>> 0;
  x = Math.imul(x ^ (x >>> 16), 0x7feb352d) >>> 0;
  x = Math.imul(x ^ (x >>> 15), 0x846ca68b) >>> 0;
  return ((x ^ (x >>> 16)) >>> 0) / 4294967296;
}

/**
 * One reading of a speed sensor.
 *
 * Equation: round((true + noise) / resolution) x resolution, noise even within the limit, never below zero.
 *
 * @param sensor resolutionRpm and noiseRpm [rpm], seed [-]
 * @param trueRpm speed [rpm]
 * @param count number of the reading [-]
 * @returns speed as read [rpm]
 * Range: count a whole number from 0.
 * Source: quantisation of a tone wheel; the noise, a 32-bit integer hash, is ours.
 * @example
 * sensorReading({ resolutionRpm: 10, noiseRpm: 0, seed: 1 }, 123, 0) // 120
 */
export function sensorReading(sensor: SpeedSensor, trueRpm: number, count: number): number {
  const noisy =
    sensor.noiseRpm === 0
      ? trueRpm
      : Math.max(0, trueRpm + sensor.noiseRpm * (2 * even(sensor.seed, count) - 1));
  return sensor.resolutionRpm === 0
    ? noisy
    : Math.round(noisy / sensor.resolutionRpm) * sensor.resolutionRpm;
}
