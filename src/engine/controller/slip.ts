/**
 * Slip as a controller reckons it from two speed sensors and the ratio of the gear it has commanded.
 *
 * Equation: slip = turbine - ratio x output.
 *
 * @param turbineRpm speed of the turbine, as read [rpm]
 * @param ratio turbine turns for one turn of the output [-]
 * @param outputRpm speed of the output shaft, as read [rpm]
 * @returns slip, above zero where the turbine runs ahead of the gear [rpm]
 * Range: any speeds; ratio above zero.
 * Source: the definition of slip on this site; common practice, no source.
 * @example
 * slipRpm(2100, 4, 500) // 100
 */
export const slipRpm = (turbineRpm: number, ratio: number, outputRpm: number): number =>
  turbineRpm - ratio * outputRpm;
