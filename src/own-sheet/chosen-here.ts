/** A choice among the transmissions of this device, with what makes a table of one. */
import type { ReadonlySignal } from '@preact/signals';
import { sheetStore } from '../storage/sheets/sheet-store.ts';
import { tableStore } from '../storage/sheets/table-store.ts';
import { makeChosen, type Chosen } from './chosen.ts';
import { CODE, startWorker } from './start-worker.ts';

/** `training`: where the table of the training transmission has been fetched already. */
export const chosenBy = (which: ReadonlySignal<string>, training?: string): Chosen =>
  makeChosen({
    which,
    sheets: sheetStore(),
    tables: tableStore(),
    start: startWorker,
    code: CODE,
    site: {
      training: () => training ?? import('../planner/load.ts').then(({ table }) => table),
      second: () => import('./load-second.ts').then(({ table }) => table),
    },
  });
