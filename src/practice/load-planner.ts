import { decodeTable, plannerOf, type Table } from '../diagnosis/index.ts';
import type { Ask } from '../cases/path.ts';
import type { On } from '../cases/made-key.ts';

export interface Planner {
  readonly table: Table;
  readonly ask: Ask;
}

const tables: Readonly<Record<On, () => Promise<string>>> = {
  training: () => import('../diagnosis/kept-table.ts').then(({ keptTable }) => keptTable),
  second: () =>
    import('../diagnosis/kept-second-table.ts').then(({ keptSecondTable }) => keptSecondTable),
};

/** The planner of a transmission, fetched with its table when a case is on it. */
export async function loadPlanner(on: On): Promise<Planner> {
  const table = decodeTable(await tables[on]());
  return { table, ask: plannerOf(table) };
}
