import * as fc from 'fast-check';
import {
  CIRCUITS,
  FAULT_IDS,
  applyFaults,
  faultKinds,
  fluidClasses,
  secondTraining,
  training,
  makeFluid,
} from '../../src/engine/index.ts';
import type {
  FaultId,
  FaultKind,
  FaultSet,
  FaultSetting,
  Fluid,
  FluidClass,
  SteadyRequest,
} from '../../src/engine/index.ts';

/** One seed for every property, so that a failure comes back tomorrow. */
export const SEED = 20_240_611;

// Even over the range: fast-check's doubles are even over bit patterns, so nearly all would be next to nothing.
const STEPS = 2 ** 30;
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS);

/** Severity with its ends well represented, where corners hide. */
export const severity = fc.oneof(
  { weight: 6, arbitrary: between(0, 1) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1, 1e-6, 1 - 1e-6) },
);

function setting(id: FaultId): fc.Arbitrary<FaultSetting> {
  const kind: FaultKind = faultKinds[id];
  const how = kind.onOff === true ? fc.constantFrom(0, 1) : severity;
  if (!kind.oneCircuit) return how.map((value) => ({ severity: value }));
  return fc
    .tuple(how, fc.constantFrom(...CIRCUITS))
    .map(([value, circuit]) => ({ severity: value, circuit }));
}

/** Any number of faults together, none and all fifteen included. */
export const faultSets: fc.Arbitrary<FaultSet> = fc
  .subarray([...FAULT_IDS])
  .chain((ids) => fc.tuple(...ids.map((id) => setting(id).map((value) => [id, value] as const))))
  .map((entries) => Object.fromEntries(entries) as FaultSet);

/** The classes of the course and any fluid a data sheet might give. */
export const fluids: fc.Arbitrary<Fluid> = fc.oneof(
  fc
    .constantFrom(...(Object.keys(fluidClasses) as FluidClass[]))
    .map((name) => makeFluid(fluidClasses[name])),
  fc
    .record({ kv100CSt: between(2.5, 12), times: between(3, 8), density15: between(801, 950) })
    .map(({ kv100CSt, times, density15 }) =>
      makeFluid({ kv100CSt, kv40CSt: kv100CSt * times, density15 }),
    ),
);

export const tempsC = between(-30, 140);
export const engineSpeeds = fc.oneof(
  { weight: 5, arbitrary: between(0, 8000 / 60) },
  { weight: 5, arbitrary: between(8, 20) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1e-9, 1e-3, 0.1, 8000 / 60) },
);
const commands = fc.oneof(
  { weight: 4, arbitrary: between(200e3, 2e6) },
  { weight: 1, arbitrary: between(0, 3e6) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1, 20e3, 3e6) },
);
const applied = fc.shuffledSubarray([...CIRCUITS]);

/** A valid request of any kind, faults and all. */
export const requests: fc.Arbitrary<SteadyRequest> = fc.record({
  plant: fc
    .tuple(fc.constantFrom(training, secondTraining), faultSets)
    .map(([sound, faults]) => applyFaults(sound, faults)),
  fluid: fluids,
  tempC: tempsC,
  engineSpeed: engineSpeeds,
  lineCommand: commands,
  clutchCommand: commands,
  applied,
});
