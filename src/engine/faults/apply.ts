import { EngineError, requireInRange } from '../error.ts';
import { CIRCUITS } from '../transmission/circuits.ts';
import type { Circuit } from '../transmission/circuits.ts';
import type { Plant } from '../transmission/plant.ts';
import { training } from '../transmission/transmissions.ts';
import { FAULT_IDS, faultKinds } from './catalogue.ts';
import type { FaultId, FaultKind } from './catalogue.ts';

/** How bad, and for a fault that sits in one circuit, where; forward where nothing is said. */
export interface FaultSetting {
  readonly severity: number;
  readonly circuit?: Circuit;
}

/** Any number of faults at once. */
export type FaultSet = { readonly [id in FaultId]?: FaultSetting | undefined };

/**
 * What a severity means in the fault's own measure.
 *
 * Equation: (1 - severity) healthy + severity worst.
 *
 * @param id which fault [-]
 * @param severity 0 healthy to 1 worst [-]
 * @param plant what the fault sits in; the training transmission where left out [-]
 * @param circuit where it sits in one; forward where left out [-]
 * @returns amount [the fault's own unit: mm, um, L or a factor]
 * Range: severity 0 to 1; the turbine sensor only 0 or 1.
 * @throws EngineError out of range, naming it.
 * Source: training transmission, invented.
 * @example
 * faultAmount('transferSeal', 0.625) // 0.25
 */
export function faultAmount(
  id: FaultId,
  severity: number,
  plant: Plant = training,
  circuit: Circuit = 'forward',
): number {
  const kind: FaultKind = faultKinds[id];
  requireInRange(severity, { name: `Severity of ${id}`, unit: '', min: 0, max: 1 });
  if (kind.onOff === true && severity !== 0 && severity !== 1) {
    throw new EngineError(
      id,
      `Severity of ${id} is ${severity}; it is 0 or 1, since the sensor reads falsely or it does not.`,
    );
  }
  // Both ends come out exactly, so that the inverse takes them.
  return (1 - severity) * kind.healthyIn(plant, circuit) + severity * kind.worst;
}

/**
 * The severity that gives an amount of a fault: the inverse of faultAmount.
 *
 * @param id which fault [-]
 * @param amount in the fault's own measure [the fault's own unit]
 * @param plant what the fault sits in; the training transmission where left out [-]
 * @returns severity [-]
 * Range: amount between healthy and worst.
 * @throws EngineError outside it, naming it.
 * Source: training transmission, invented.
 * @example
 * faultSeverity('transferSeal', 0.25) // 0.625
 */
export function faultSeverity(id: FaultId, amount: number, plant: Plant = training): number {
  const { healthyIn, worst, measure, unit }: FaultKind = faultKinds[id];
  const healthy = healthyIn(plant, 'forward');
  requireInRange(amount, {
    name: measure,
    unit,
    min: Math.min(healthy, worst),
    max: Math.max(healthy, worst),
  });
  return (amount - healthy) / (worst - healthy);
}

/**
 * A transmission with faults in it.
 *
 * @param plant the transmission before [-]
 * @param faults severities from 0 to 1, with the circuit where the fault sits in one [-]
 * @returns a new plant [-]; the given one is untouched
 * Range: severities 0 to 1; circuit forward, reverse or high.
 * @throws EngineError on an unknown fault, a severity out of range, a circuit where the fault has none.
 * Source: training transmission, invented.
 * @example
 * applyFaults(training, { transferSeal: { severity: 0.625 } }).leaks.forward.transferSeal.height // 2.5e-4
 */
export function applyFaults(plant: Plant, faults: FaultSet): Plant {
  let changed = plant;
  for (const [name, setting] of Object.entries(faults)) {
    if (setting === undefined) continue;
    if (!(FAULT_IDS as readonly string[]).includes(name)) {
      throw new EngineError(
        name,
        `There is no fault called ${name}; the faults are ${FAULT_IDS.join(', ')}.`,
      );
    }
    const id = name as FaultId;
    const kind: FaultKind = faultKinds[id];
    if (setting.circuit !== undefined && !kind.oneCircuit) {
      throw new EngineError(id, `${id} does not sit in one circuit; leave the circuit out.`);
    }
    const circuit = setting.circuit ?? 'forward';
    if (!CIRCUITS.includes(circuit)) {
      throw new EngineError(
        id,
        `There is no circuit called ${circuit}; the circuits are ${CIRCUITS.join(', ')}.`,
      );
    }
    const amount = faultAmount(id, setting.severity, plant, circuit);
    changed = kind.apply(changed, amount, { circuit, severity: setting.severity });
  }
  return changed;
}
