/**
 * Pressure that fluid loses on its way through a filter.
 *
 * Equation: dp = mu R Q. R goes with the thickness of the media and against its area and permeability.
 *
 * @param resistance of filter and pick-up [1/m3]
 * @param flow [m3/s]
 * @param dynamic dynamic viscosity [Pa s]
 * @returns pressure lost [Pa]
 * Range: all three above zero; creeping flow, as in felt and paper.
 * Leaves out: what turbulence and the bends of neck and pick-up add at high flow.
 * Source: Darcy's law, Les fontaines publiques de la ville de Dijon (1856).
 * @example
 * filterLoss(3.4e8, 2e-4, 0.025) // 1700
 */
export function filterLoss(resistance: number, flow: number, dynamic: number): number {
  return dynamic * resistance * flow;
}
