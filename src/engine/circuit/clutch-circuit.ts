import { gapFlowRate } from '../flow/gap.ts'
import { holeFlow } from '../flow/hole.ts'
import type { FluidState } from '../fluid/fluid.ts'
import type { CircuitLeaks, Plant } from '../gearbox.ts'
import { findRoot } from '../numerics/find-root.ts'

/** Everything that leaves a clutch circuit at a pressure, part by part [m3/s]. */
export interface LeakParts {
  readonly rings: number
  readonly transferSeal: number
  readonly pistonSeal: number
  readonly openPort: number
}

/** Leak of one circuit, part by part [m3/s], at a pressure [Pa]. */
export function leakParts(leaks: CircuitLeaks, pressure: number, fluid: FluidState): LeakParts {
  const { density, dynamic, kinematic } = fluid
  return {
    rings: gapFlowRate(leaks.rings, pressure, density, dynamic),
    transferSeal: gapFlowRate(leaks.transferSeal, pressure, density, dynamic),
    pistonSeal: gapFlowRate(leaks.pistonSeal, pressure, density, dynamic),
    openPort: holeFlow(leaks.openPortArea, pressure, density, kinematic),
  }
}

/** Leak of one circuit [m3/s] at a pressure [Pa]. */
export function leakFlow(leaks: CircuitLeaks, pressure: number, fluid: FluidState): number {
  const { density, dynamic, kinematic } = fluid
  return (
    gapFlowRate(leaks.rings, pressure, density, dynamic) +
    gapFlowRate(leaks.transferSeal, pressure, density, dynamic) +
    gapFlowRate(leaks.pistonSeal, pressure, density, dynamic) +
    holeFlow(leaks.openPortArea, pressure, density, kinematic)
  )
}

/**
 * What the regulating valve lets into a clutch [m3/s].
 *
 * Equation: Qfeed = x hole(pl - pc), x = clamp((pcmd - pc) / band, 0, 1). No flow back from clutch to line.
 */
export function feedFlow(
  plant: Plant,
  pressures: { readonly line: number; readonly clutch: number; readonly command: number },
  fluid: FluidState,
): number {
  const opening = Math.min(1, (pressures.command - pressures.clutch) / plant.feedBand)
  if (opening <= 0) return 0
  const dp = pressures.line - pressures.clutch
  if (dp <= 0) return 0
  return opening * holeFlow(plant.feedArea, dp, fluid.density, fluid.kinematic)
}

/** The steady state of one clutch circuit. */
export interface CircuitState {
  readonly pressure: number
  readonly feed: number
  readonly leak: number
  readonly iterations: number
  readonly converged: boolean
}

/**
 * The pressure at which a clutch circuit gets as much as it loses, for a given line pressure [Pa].
 * Unique in [0, min(command, line)], since the feed falls and the leak rises with pressure.
 */
export function balanceCircuit(
  plant: Plant,
  leaks: CircuitLeaks,
  given: { readonly line: number; readonly command: number },
  fluid: FluidState,
): CircuitState {
  const { line, command } = given
  const excess = (clutch: number): number =>
    feedFlow(plant, { line, clutch, command }, fluid) - leakFlow(leaks, clutch, fluid)
  let low = 0
  let high = Math.min(command, line)
  let valueLow = excess(low)
  let valueHigh = excess(high)
  // The valve's opening has a corner one band below command; a smooth bracket either side of it converges faster.
  const corner = command - plant.feedBand
  if (corner > 0 && corner < high) {
    const value = excess(corner)
    if (value > 0) {
      low = corner
      valueLow = value
    } else {
      high = corner
      valueHigh = value
    }
  }
  if (high <= 0 || valueLow <= 0) {
    return { pressure: low, feed: 0, leak: 0, iterations: 0, converged: true }
  }
  const found = findRoot(excess, low, high, valueLow, valueHigh)
  return {
    pressure: found.root,
    feed: feedFlow(plant, { line, clutch: found.root, command }, fluid),
    leak: leakFlow(leaks, found.root, fluid),
    iterations: found.iterations,
    converged: found.converged,
  }
}
