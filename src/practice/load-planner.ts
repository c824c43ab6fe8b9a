import {
  decodeTable,
  plannerOf,
  type Advice,
  type Question,
  type Table,
} from '../diagnosis/index.ts';
import type { On } from '../cases/made-key.ts';

export interface Planner {
  readonly table: Table;
  readonly ask: (question: Question) => Advice;
}

const tables: Readonly<Record<On, () => Promise<string>>> = {
  training: () => import('../diagnosis/kept-table.ts').then(({ keptTable }) => keptTable),
  second: () =>
    import('../diagnosis/kept-second-table.ts').then(({ keptSecondTable }) => keptSecondTable),
};
const made: Partial<Record<On, Planner>> = {};

/** The planner of a transmission, fetched with its table when a case is on it, and made once. */
export async function loadPlanner(on: On): Promise<Planner> {
  const text = await tables[on]();
  return (made[on] ??= plannerWith(decodeTable(text)));
}
const plannerWith = (table: Table): Planner => ({ table, ask: plannerOf(table) });
