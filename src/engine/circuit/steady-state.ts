import { clutchTorque } from '../clutch/torque.ts';
import { EngineError, requireInRange } from '../error.ts';
import { gapFlowRate } from '../flow/gap.ts';
import { densityRatio, fluidAt } from '../fluid/fluid.ts';
import type { Fluid, FluidState } from '../fluid/fluid.ts';
import { viscosityLine } from '../fluid/viscosity-temperature.ts';
import { holeFlow } from '../flow/hole.ts';
import { findRoot } from '../numerics/find-root.ts';
import { airDrawn } from '../pump/low-level.ts';
import { pumpIntake, pumpSlipPerPascal } from '../pump/pump.ts';
import { atTemperature } from '../transmission/at-temperature.ts';
import { CIRCUITS } from '../transmission/circuits.ts';
import type { Circuit } from '../transmission/circuits.ts';
import type { Plant } from '../transmission/plant.ts';
import { balanceCircuit, leakParts } from './clutch-circuit.ts';
import type { CircuitState, LeakParts } from './clutch-circuit.ts';

/** Limits of what the steady state may be asked. */
export const STEADY_LIMITS = {
  engineSpeed: { name: 'Engine speed', unit: 'rev/s', min: 0, max: 8000 / 60 },
  lineCommand: { name: 'Line pressure command', unit: 'Pa', min: 0, max: 3e6 },
  clutchCommand: { name: 'Clutch pressure command', unit: 'Pa', min: 0, max: 3e6 },
} as const;

/** What the steady state needs to know. */
export interface SteadyRequest {
  readonly plant: Plant;
  readonly fluid: Fluid;
  readonly tempC: number;
  /** [rev/s] */
  readonly engineSpeed: number;
  /** [Pa] */
  readonly lineCommand: number;
  /** [Pa], the same for every circuit applied */
  readonly clutchCommand: number;
  readonly applied: readonly Circuit[];
}

/** One applied clutch: pressure [Pa], what it takes and loses [m3/s], torque it holds [N m]. */
export interface AppliedCircuit {
  readonly pressure: number;
  readonly feed: number;
  readonly leak: number;
  readonly parts: LeakParts;
  readonly holds: number;
}

/** How the solve ended: the largest mass-balance error at any node, as a share of the pump's intake. */
export interface SolveStatus {
  readonly converged: boolean;
  readonly iterations: number;
  readonly residual: number;
}

/** Pressures [Pa] and flows [m3/s] with nothing moving any more, and how the solve ended. */
export interface SteadyState {
  readonly linePressure: number;
  /** False where the pump could not keep the line at its command. */
  readonly lineAtCommand: boolean;
  readonly circuits: { readonly [circuit in Circuit]?: AppliedCircuit };
  readonly pumpIntake: number;
  readonly pumpSlip: number;
  readonly pumpFlow: number;
  /** Part of what the pump draws that is air, 0 to 0.9. */
  readonly air: number;
  readonly clearances: number;
  readonly bleed: number;
  readonly regulatorLoss: number;
  readonly leftOver: number;
  /** What of the left over goes through the cooler; the rest returns to the pump's inlet. */
  readonly coolerFlow: number;
  readonly status: SolveStatus;
}

/**
 * The fluid as the plant has worn it: both published kinematic viscosities times the plant's factor.
 *
 * @param plant viscosityFactor [-]
 * @param fluid the fluid as poured [-]
 * @returns the fluid as it is, kv40CSt and kv100CSt [cSt]
 * Range: factor 0.6 to 1 in the training transmission.
 * Leaves out: what wear does to density, which is next to nothing.
 * Source: ASTM D341 through the two reduced values; the factor is invented.
 * @example
 * fluidInPlant(applyFaults(training, { thinFluid: { severity: 1 } }), makeFluid({ kv40CSt: 29.6, kv100CSt: 6, density15: 845 })).kv40CSt // 17.76
 */
export function fluidInPlant(plant: Plant, fluid: Fluid): Fluid {
  if (plant.viscosityFactor === 1) return fluid;
  const kv40CSt = fluid.kv40CSt * plant.viscosityFactor;
  const kv100CSt = fluid.kv100CSt * plant.viscosityFactor;
  const line = viscosityLine(
    { tempC: 40, kinematicCSt: kv40CSt },
    { tempC: 100, kinematicCSt: kv100CSt },
  );
  return { ...fluid, kv40CSt, kv100CSt, line };
}

/** What leaves the line at a pressure, besides what the pump slips. */
interface Demand {
  readonly clearances: number;
  readonly bleed: number;
  readonly regulatorLoss: number;
  readonly circuits: readonly CircuitState[];
  readonly total: number;
}

function demandAt(request: SteadyRequest, fluid: FluidState, line: number): Demand {
  const { plant } = request;
  const clearances = gapFlowRate(plant.lineClearances, line, fluid.density, fluid.dynamic);
  const bleed = holeFlow(plant.bleedArea, line, fluid.density, fluid.kinematic);
  const regulatorLoss = gapFlowRate(plant.regulatorBore, line, fluid.density, fluid.dynamic);
  const circuits = request.applied.map((circuit) =>
    balanceCircuit(
      plant.feed,
      plant.leaks[circuit],
      { line, command: request.clutchCommand * plant.valveHolds[circuit] },
      fluid,
    ),
  );
  const feeds = circuits.reduce((sum, circuit) => sum + circuit.feed, 0);
  const total = clearances + bleed + regulatorLoss + feeds;
  return { clearances, bleed, regulatorLoss, circuits, total };
}

function checkRequest(request: SteadyRequest): void {
  requireInRange(request.engineSpeed, STEADY_LIMITS.engineSpeed);
  requireInRange(request.lineCommand, STEADY_LIMITS.lineCommand);
  requireInRange(request.clutchCommand, STEADY_LIMITS.clutchCommand);
  for (const circuit of request.applied) {
    if (!CIRCUITS.includes(circuit)) {
      throw new EngineError(
        'applied',
        `There is no circuit called ${circuit}; the circuits are ${CIRCUITS.join(', ')}.`,
      );
    }
  }
  if (new Set(request.applied).size !== request.applied.length) {
    throw new EngineError('applied', 'A circuit is named twice; name each applied circuit once.');
  }
}

/**
 * Pressures and flows with the clutches applied and nothing moving any more.
 *
 * Equation: at each clutch, feed = rings + transfer seal + piston seal + hard lip + open port; at the line,
 * pump = clearances + bleed + regulator bore + feeds + left over; cooler = min(left over, p / (R mu)). The regulator is ideal: the line is at command if the
 * pump can feed everything there, else at the pressure where all is used up and nothing is left over.
 *
 * @param asked plant, fluid, tempC [degC], engineSpeed [rev/s], lineCommand and clutchCommand [Pa], applied
 * @returns pressures [Pa], flows [m3/s], torque held [N m], and how the solve ended
 * Range: -30 to 140 degC, 0 to 8000 rpm, commands 0 to 3 MPa; pressures land in [0, command].
 * @throws EngineError on a value out of range or an unknown circuit.
 * Leaves out: regulator droop, pulsation, back pressure of the cooler, centrifugal head.
 * Source: continuity at each node; element laws as in flow and pump. The valve's proportional band is ours.
 * @example
 * solveSteady({ plant: training, fluid: makeFluid(fluidClasses['low-viscosity']), tempC: 20, engineSpeed: 25, lineCommand: 6e5, clutchCommand: 4e5, applied: [] }).linePressure // 6e5
 */
export function solveSteady(asked: SteadyRequest): SteadyState {
  checkRequest(asked);
  const plant = atTemperature(asked.plant, asked.tempC);
  const request = { ...asked, plant };
  const fluid = fluidAt(fluidInPlant(plant, request.fluid), request.tempC);
  // Two densities for nothing where the level is right, and every slider asks this a hundred times.
  const air =
    plant.missingFluid === 0
      ? 0
      : airDrawn(plant.sump, plant.missingFluid, {
          engineRpm: request.engineSpeed * 60,
          swell: densityRatio(request.fluid, 20, request.tempC),
        });
  const intake = pumpIntake(plant.pump, request.engineSpeed, fluid.dynamic, air);
  const slipPerPascal = pumpSlipPerPascal(plant.pump, fluid.dynamic);
  const command = request.lineCommand * plant.lineCommandFactor;
  let demand = demandAt(request, fluid, command);
  let line = command;
  let iterations = 0;
  let converged = true;
  const spare = intake - slipPerPascal * command - demand.total;
  const lineAtCommand = spare >= 0;
  if (!lineAtCommand) {
    const excess = (pressure: number): number => {
      demand = demandAt(request, fluid, pressure);
      return intake - slipPerPascal * pressure - demand.total;
    };
    const found = findRoot(excess, 0, command, intake, spare);
    line = found.root;
    iterations = found.iterations;
    converged = found.converged;
    demand = demandAt(request, fluid, line);
  }
  const pumpSlip = slipPerPascal * line;
  const pumpFlow = intake - pumpSlip;
  const lineError = lineAtCommand ? 0 : Math.abs(pumpFlow - demand.total);
  const errors = demand.circuits.map((circuit) => Math.abs(circuit.feed - circuit.leak));
  const circuits: { [circuit in Circuit]?: AppliedCircuit } = {};
  request.applied.forEach((name, index) => {
    const { pressure, feed, leak } = demand.circuits[index] as CircuitState;
    const parts = leakParts(plant.leaks[name], pressure, fluid);
    circuits[name] = {
      pressure,
      feed,
      leak,
      parts,
      holds: clutchTorque(plant.clutches[name], pressure),
    };
  });
  const leftOver = lineAtCommand ? spare : 0;
  return {
    linePressure: line,
    lineAtCommand,
    circuits,
    pumpIntake: intake,
    pumpSlip,
    pumpFlow,
    air,
    clearances: demand.clearances,
    bleed: demand.bleed,
    regulatorLoss: demand.regulatorLoss,
    leftOver,
    coolerFlow: Math.min(
      leftOver,
      plant.cooler.pressure / (plant.cooler.resistance * fluid.dynamic),
    ),
    status: {
      converged: converged && demand.circuits.every((circuit) => circuit.converged),
      iterations: iterations + demand.circuits.reduce((sum, c) => sum + c.iterations, 0),
      residual: intake === 0 ? 0 : Math.max(lineError, ...errors) / intake,
    },
  };
}
