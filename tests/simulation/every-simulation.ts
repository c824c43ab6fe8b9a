import { readdirSync, existsSync } from 'node:fs';
import type { ComponentType } from 'preact';
import { bringSuspects } from '../../src/cases/bay-list.ts';
import { solveBay } from '../../src/cases/solve-bay.ts';
import { readings as solveComplaints } from '../../src/car/complaint-readings.ts';
import { recordAll } from '../../src/car/record.ts';
import { bringRecordings } from '../../src/car/recordings.ts';
import { bringReadings } from '../../src/widgets/before-and-after/brought.ts';
import { solveReadings } from '../../src/widgets/before-and-after/solve-readings.ts';
import { bringCars } from '../../src/widgets/gauge-bench/cars.ts';
import { solveCars } from '../../src/widgets/gauge-bench/solve-cars.ts';
import { bringSeals } from '../../src/widgets/two-seals/seals.ts';
import { solveSeals } from '../../src/widgets/two-seals/solve-seals.ts';
import { bringReadings as bringComplaints } from '../../src/widgets/three-checks/readings.ts';
import { firstRun } from '../../src/widgets/engagement/first-run.ts';
import { openingText } from '../../src/widgets/whole-car/opening.ts';
import type { Givens, SimModel, SimSpec, TasksFile } from '../../src/simulation/sim-spec.ts';

/** A simulation as the tests see it: whatever its own givens are. */
export type AnySim = SimSpec<Givens, SimModel<Givens>> & TasksFile<Givens, SimModel<Givens>>;

export interface OneSimulation {
  readonly name: string;
  readonly sim: AnySim;
  readonly makeModel: () => SimModel<Givens>;
  /** The island and what it fetches later, where they go by their common names. */
  readonly View: ComponentType<Record<string, unknown>> | undefined;
  /** What index.astro hands the island over. */
  readonly props: Readonly<Record<string, unknown>>;
  readonly Below: ComponentType<Record<string, unknown>> | undefined;
}

const folder = new URL('../../src/widgets/', import.meta.url);

const recordings = recordAll();
bringRecordings(recordings);
const cars = solveCars();
bringCars(cars);
const seals = solveSeals();
bringSeals(seals);
const suspects = solveBay();
bringSuspects(suspects);
const readings = solveReadings();
bringReadings(readings);
const complaints = solveComplaints();
bringComplaints(complaints);
const PROPS: Readonly<Record<string, OneSimulation['props']>> = {
  'controller-sees': { recordings },
  'sampling-trap': { recordings },
  'gauge-bench': { cars },
  'two-seals': { seals },
  'test-order': { suspects },
  'before-and-after': { readings },
  'three-checks': { readings: complaints },
  engagement: { first: firstRun() },
  'whole-car': { opening: openingText() },
};

/** Every folder of src/widgets that has a sim.ts. The question player has none. */
const names = readdirSync(folder).filter((name) => existsSync(new URL(`${name}/sim.ts`, folder)));

async function open(name: string): Promise<OneSimulation> {
  const load = async (file: string): Promise<Record<string, unknown>> => {
    const url = new URL(`${name}/${file}`, folder);
    return existsSync(url) ? ((await import(url.href)) as Record<string, unknown>) : {};
  };
  const [model, sim, tasks, view, below] = await Promise.all(
    ['model.ts', 'sim.ts', 'tasks.ts', 'View.tsx', 'Below.tsx'].map(load),
  );
  if (typeof model?.['makeModel'] !== 'function')
    throw new Error(`${name}/model.ts exports no makeModel.`);
  if (typeof sim?.sim !== 'object') throw new Error(`${name}/sim.ts exports no sim.`);
  if (!Array.isArray(tasks?.tasks)) throw new Error(`${name}/tasks.ts exports no tasks.`);
  return {
    name,
    sim: { ...sim.sim, tasks: tasks.tasks } as unknown as AnySim,
    makeModel: model['makeModel'] as () => SimModel<Givens>,
    View: view?.View as OneSimulation['View'],
    props: PROPS[name] ?? {},
    Below: below?.Below as ComponentType<Record<string, unknown>> | undefined,
  };
}

export const everySimulation: readonly OneSimulation[] = await Promise.all(names.map(open));
