import { EngineError, requireInRange } from '../error.ts';
import { FLUID_LIMITS } from './fluid.ts';
import { referenceViscosities } from './viscosity-index-table.ts';

/**
 * Viscosity index: how little a fluid thins between 40 and 100 degC. Not rounded.
 *
 * Equation: U >= H: VI = 100 (L - U) / (L - H); U < H: N = (log H - log U) / log Y,
 * VI = (10^N - 1) / 0.00715 + 100. L and H from the standard's table up to Y = 70, from its quadratics above.
 *
 * @param kv40CSt kinematic viscosity U at 40 degC [cSt]
 * @param kv100CSt kinematic viscosity Y at 100 degC [cSt]
 * @returns viscosity index [-]
 * Range: kv100 from 2 cSt; below, the index is not defined. It may come out negative for a very poor oil.
 * @throws EngineError below 2 cSt at 100 degC, or when the fluid would be thicker hot than cold.
 * Source: ASTM D2270 (= ISO 2909), procedures A (5.1) and B (6.1), table 1.
 * @example
 * viscosityIndex(73.5, 8.86) // 92.0332936979
 */
export function viscosityIndex(kv40CSt: number, kv100CSt: number): number {
  const u = requireInRange(kv40CSt, FLUID_LIMITS.kv40CSt);
  const y = requireInRange(kv100CSt, FLUID_LIMITS.kv100CSt);
  if (y < 2) {
    throw new EngineError(
      'kv100CSt',
      `Kinematic viscosity at 100 C is ${y} cSt; the viscosity index is defined from 2 cSt upward.`,
    );
  }
  if (y >= u) {
    throw new EngineError(
      'kv100CSt',
      `Kinematic viscosity at 100 C is ${y} cSt and at 40 C ${u} cSt; the value at 100 C must be the smaller.`,
    );
  }
  const { l, h } = referenceViscosities(y);
  if (u >= h) return (100 * (l - u)) / (l - h);
  const n = Math.log10(h / u) / Math.log10(y);
  return (10 ** n - 1) / 0.00715 + 100;
}
