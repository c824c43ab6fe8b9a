import { gapFlowRate } from '../flow/gap.ts';
import { HOLE_DISCHARGE, holeFlow } from '../flow/hole.ts';
import type { FluidState } from '../fluid/fluid.ts';
import type { CircuitLeaks, Feed } from '../transmission/plant.ts';
import { findRoot } from '../numerics/find-root.ts';

/** Everything that leaves a clutch circuit at a pressure, part by part [m3/s]. */
export interface LeakParts {
  readonly rings: number;
  readonly transferSeal: number;
  readonly pistonSeal: number;
  readonly hardLip: number;
  readonly openPort: number;
}

/**
 * Leak of one circuit, part by part.
 *
 * @param leaks rings, transferSeal, pistonSeal, hardLip [m], openPortArea [m2]
 * @param pressure of the circuit [Pa]
 * @param fluid density [kg/m3], dynamic [Pa s], kinematic [m2/s]
 * @returns flow through each part [m3/s]
 * Range: pressure zero and above; all leaks end in the sump at zero gauge.
 * Source: gapFlow and holeFlow.
 * @example
 * leakParts(training.leaks.high, 4e5, { density: 790, dynamic: 0.005, kinematic: 6.3291139e-6 }).rings // 1.95108e-5
 */
export function leakParts(leaks: CircuitLeaks, pressure: number, fluid: FluidState): LeakParts {
  const { density, dynamic, kinematic } = fluid;
  return {
    rings: gapFlowRate(leaks.rings, pressure, density, dynamic),
    transferSeal: gapFlowRate(leaks.transferSeal, pressure, density, dynamic),
    pistonSeal: gapFlowRate(leaks.pistonSeal, pressure, density, dynamic),
    hardLip: gapFlowRate(leaks.hardLip, pressure, density, dynamic),
    openPort: holeFlow(leaks.openPortArea, pressure, density, kinematic),
  };
}

/**
 * Leak of one circuit, all parts together.
 *
 * @param leaks rings, transferSeal, pistonSeal, hardLip [m], openPortArea [m2]
 * @param pressure of the circuit [Pa]
 * @param fluid density [kg/m3], dynamic [Pa s], kinematic [m2/s]
 * @returns flow [m3/s]
 * Range: pressure zero and above.
 * Source: gapFlow and holeFlow.
 * @example
 * leakFlow(training.leaks.high, 4e5, { density: 790, dynamic: 0.005, kinematic: 6.3291139e-6 }) // 1.95108e-5
 */
export function leakFlow(leaks: CircuitLeaks, pressure: number, fluid: FluidState): number {
  const { density, dynamic, kinematic } = fluid;
  return (
    gapFlowRate(leaks.rings, pressure, density, dynamic) +
    gapFlowRate(leaks.transferSeal, pressure, density, dynamic) +
    gapFlowRate(leaks.pistonSeal, pressure, density, dynamic) +
    gapFlowRate(leaks.hardLip, pressure, density, dynamic) +
    holeFlow(leaks.openPortArea, pressure, density, kinematic)
  );
}

/**
 * What the regulating valve lets into a clutch: its hole and the passage behind it in series.
 *
 * Equation: pl - pc = Rp mu Q + rho/2 (Q / (Cd x A))^2, x = clamp((pcmd - pc) / band, 0, 1), so
 * Q = 2 dp x / (x Rp mu + sqrt((x Rp mu)^2 + 4 k dp)), k = rho / (2 (Cd A)^2). Nothing where the line is below the clutch.
 *
 * @param feed area [m2], passage [1/m3], band [Pa]
 * @param pressures line, clutch, command [Pa]
 * @param fluid density [kg/m3], dynamic [Pa s]
 * @returns flow [m3/s]
 * Range: pressures zero and above.
 * Leaves out: the valve's own leakage and lag, and flow back through an open valve into a starved line.
 * Source: orifice equation, Rabie (2009) eq. 2.37, with a passage by Hagen-Poiseuille; the proportional opening is ours.
 * @example
 * feedFlow(training.feed, { line: 6e5, clutch: 3e5, command: 4e5 }, { density: 790, dynamic: 0.005, kinematic: 6.3291139e-6 }) // 5.03612e-5
 */
export function feedFlow(
  feed: Feed,
  pressures: { readonly line: number; readonly clutch: number; readonly command: number },
  fluid: FluidState,
): number {
  const opening = Math.min(1, (pressures.command - pressures.clutch) / feed.band);
  const drop = pressures.line - pressures.clutch;
  if (opening <= 0 || drop <= 0 || feed.area <= 0) return 0;
  const passage = opening * feed.passage * fluid.dynamic;
  const discharge = HOLE_DISCHARGE * feed.area;
  const hole = fluid.density / (2 * discharge * discharge);
  return (2 * drop * opening) / (passage + Math.sqrt(passage * passage + 4 * hole * drop));
}

/** The steady state of one clutch circuit. */
export interface CircuitState {
  readonly pressure: number;
  readonly feed: number;
  readonly leak: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/**
 * The pressure at which a clutch circuit gets as much as it loses, for a given line pressure [Pa].
 * Unique in [0, min(command, line)], since the feed falls and the leak rises with pressure.
 *
 * @param way area [m2], passage [1/m3], band [Pa]
 * @param leaks rings, transferSeal, pistonSeal, hardLip [m], openPortArea [m2]
 * @param given line and command [Pa]
 * @param fluid density [kg/m3], dynamic [Pa s], kinematic [m2/s]
 * @returns pressure [Pa], feed and leak [m3/s], and how the search ended
 * Range: pressures zero and above.
 * Source: continuity at the clutch.
 * @example
 * balanceCircuit(training.feed, training.leaks.high, { line: 6e5, command: 4e5 }, { density: 790, dynamic: 0.005, kinematic: 6.3291139e-6 }).pressure // 390961.31
 */
export function balanceCircuit(
  way: Feed,
  leaks: CircuitLeaks,
  given: { readonly line: number; readonly command: number },
  fluid: FluidState,
): CircuitState {
  const { line, command } = given;
  const excess = (clutch: number): number =>
    feedFlow(way, { line, clutch, command }, fluid) - leakFlow(leaks, clutch, fluid);
  let low = 0;
  let high = Math.min(command, line);
  let valueLow = excess(low);
  let valueHigh = excess(high);
  // The valve's opening has a corner one band below command; a smooth bracket either side of it converges faster.
  const corner = command - way.band;
  if (corner > 0 && corner < high) {
    const value = excess(corner);
    if (value > 0) {
      low = corner;
      valueLow = value;
    } else {
      high = corner;
      valueHigh = value;
    }
  }
  if (high <= 0 || valueLow <= 0) {
    return { pressure: low, feed: 0, leak: 0, iterations: 0, converged: true };
  }
  const found = findRoot(excess, low, high, valueLow, valueHigh);
  return {
    pressure: found.root,
    feed: feedFlow(way, { line, clutch: found.root, command }, fluid),
    leak: leakFlow(leaks, found.root, fluid),
    iterations: found.iterations,
    converged: found.converged,
  };
}
