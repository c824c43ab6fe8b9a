/** A choice among the transmissions of this device, with what makes a table of one. */
import type { ReadonlySignal } from '@preact/signals';
import { sheetStore } from '../storage/sheets/sheet-store.ts';
import { tableStore } from '../storage/sheets/table-store.ts';
import type { Planner } from '../planner/model.ts';
import { makeChosen, type Chosen } from './chosen.ts';
import { CODE, startWorker } from './start-worker.ts';

/** `training`: where the planner of the training transmission has been fetched already. */
export const chosenBy = (which: ReadonlySignal<string>, training?: Planner): Chosen =>
  makeChosen({
    which,
    sheets: sheetStore(),
    tables: tableStore(),
    start: startWorker,
    code: CODE,
    site: {
      training: () => training ?? import('../planner/load.ts').then(({ planner }) => planner),
      second: () => import('./load-second.ts').then(({ planner }) => planner),
    },
  });
