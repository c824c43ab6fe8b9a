import * as fc from 'fast-check';
import {
  CIRCUITS,
  EngineError,
  FAULT_IDS,
  SHEET_FIELDS,
  applyFaults,
  faultKinds,
  fluidClasses,
  secondTraining,
  training,
  makeFluid,
  parseSheet,
  plantFromSheet,
  trainingSheet,
} from '../../src/engine/index.ts';
import type {
  Allowed,
  Circuit,
  FaultId,
  FaultKind,
  FaultSet,
  FaultSetting,
  Fluid,
  FluidClass,
  Plant,
  SteadyRequest,
  TransmissionSheet,
} from '../../src/engine/index.ts';

/** One seed for every property, so that a failure comes back tomorrow. */
export const SEED = 20_240_611;

// Even over the range: fast-check's doubles are even over bit patterns, so nearly all would be next to nothing.
const STEPS = 2 ** 30;
/** Any number from min to max, each part of the range as likely as another. */
export const even = (min: number, max: number) =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS);

/** Severity with its ends well represented, where corners hide. */
export const severity = fc.oneof(
  { weight: 6, arbitrary: even(0, 1) },
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
    .record({ kv100CSt: even(2.5, 12), times: even(3, 8), density15: even(801, 950) })
    .map(({ kv100CSt, times, density15 }) =>
      makeFluid({ kv100CSt, kv40CSt: kv100CSt * times, density15 }),
    ),
);

export const tempsC = even(-30, 140);
export const engineSpeeds = fc.oneof(
  { weight: 5, arbitrary: even(0, 8000 / 60) },
  { weight: 5, arbitrary: even(8, 20) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1e-9, 1e-3, 0.1, 8000 / 60) },
);
const commands = fc.oneof(
  { weight: 4, arbitrary: even(200e3, 2e6) },
  { weight: 1, arbitrary: even(0, 3e6) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1, 20e3, 3e6) },
);
const applied = fc.shuffledSubarray([...CIRCUITS]);

/** Numbers of a sheet at random: a field over its whole range, each decade as likely, or near what the training sheet has. */
function numberLike(allowed: Allowed, usual: number): fc.Arbitrary<number> {
  const { min, max } = allowed;
  const low = Math.max(min, max / 1e6);
  const inside = (value: number): number => Math.min(max, Math.max(min, value));
  return fc.oneof(
    {
      weight: 1,
      arbitrary: even(Math.log(low), Math.log(max)).map((log) => inside(Math.exp(log))),
    },
    { weight: 4, arbitrary: even(-1, 1).map((log) => inside(usual * 2 ** log)) },
    { weight: 1, arbitrary: fc.constant(usual) },
  );
}

type Tree = { readonly [key: string]: Tree | number };
function treeLike(fields: object, usual: object): fc.Arbitrary<Tree> {
  const entries = Object.entries(fields).map(([key, field]: [string, Allowed | object]) => {
    const value = (usual as Readonly<Record<string, number | object>>)[key];
    return [
      key,
      'min' in field ? numberLike(field, value as number) : treeLike(field, value as object),
    ];
  });
  return fc.record(Object.fromEntries(entries) as Record<string, fc.Arbitrary<Tree | number>>);
}

function accepted(given: unknown): TransmissionSheet | undefined {
  try {
    return parseSheet(given);
  } catch (thrown) {
    if (thrown instanceof EngineError) return undefined;
    throw thrown;
  }
}

/** Commands in order and springs that they overcome: what the ranges of single numbers cannot say. */
function inOrder(tree: Tree): unknown {
  const commands = tree.commands as Record<string, number>;
  const clutch = tree.clutch as Record<string, number>;
  const feed = tree.feed as Record<string, number>;
  const at = (key: string): number => commands[key] ?? Number.NaN;
  const idleClutch_kPa = Math.min(at('idleClutch_kPa'), at('idleLine_kPa'));
  const clutchLeast_kPa = Math.min(at('clutchLeast_kPa'), at('clutchMost_kPa'));
  const least = Math.min(idleClutch_kPa, clutchLeast_kPa);
  return {
    ...tree,
    commands: {
      ...commands,
      idleClutch_kPa,
      clutchLeast_kPa,
      loadClutch_kPa: Math.min(at('loadClutch_kPa'), at('loadLine_kPa')),
    },
    clutch: {
      ...clutch,
      spring_N: Math.max(20, Math.min(clutch.spring_N ?? 0, 0.08 * least * (clutch.area_cm2 ?? 0))),
    },
    feed: { ...feed, band_kPa: Math.min(feed.band_kPa ?? 0, 0.8 * least) },
  };
}

const circuitLists = fc.shuffledSubarray([...CIRCUITS], { minLength: 1 });
const withGear = (circuit: Circuit) => circuitLists.map((list) => [...new Set([circuit, ...list])]);

/** Any sheet that the parser takes, invented from end to end. */
export const sheets: fc.Arbitrary<TransmissionSheet> = fc
  .tuple(
    treeLike(SHEET_FIELDS, trainingSheet),
    circuitLists,
    fc.record({
      R: withGear('reverse'),
      '1': withGear('forward'),
      '2': circuitLists,
      '3': withGear('high'),
      '4': circuitLists,
    }),
    fc.constantFrom(...(Object.keys(fluidClasses) as FluidClass[])),
  )
  .map(([tree, seal, applyChart, fluid]) =>
    accepted({
      ...(inOrder(tree) as object),
      name: 'Random',
      seal: { ...(tree.seal as object), circuits: seal },
      applyChart,
      fluid,
    }),
  )
  .filter((sheet) => sheet !== undefined);

/** The two invented transmissions and any other. */
export const soundPlants: fc.Arbitrary<Plant> = fc.oneof(
  fc.constantFrom(training, secondTraining),
  sheets.map((sheet) => plantFromSheet(sheet)),
);

/** A valid request of any kind, faults and all. */
export const requests: fc.Arbitrary<SteadyRequest> = fc.record({
  plant: fc.tuple(soundPlants, faultSets).map(([sound, faults]) => applyFaults(sound, faults)),
  fluid: fluids,
  tempC: tempsC,
  engineSpeed: engineSpeeds,
  lineCommand: commands,
  clutchCommand: commands,
  applied,
});
