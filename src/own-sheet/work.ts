import { buildTable } from '../diagnosis/table.ts';
import { encodeTable } from '../diagnosis/table-code.ts';
import { plantFromSheet } from '../engine/index.ts';
import type { Answer, Ask } from './messages.ts';
import { soundOf } from './sound.ts';

/** How far it has come is told in steps of this. */
const STEP = 0.01;

/** What works on one sheet, away from the page. */
export function sheetWork(tell: (answer: Answer) => void): (ask: Ask) => void {
  function table({ sheet }: Ask): void {
    const rows = buildTable(plantFromSheet(sheet));
    let told = 0;
    let row = rows.next();
    for (; row.done !== true; row = rows.next()) {
      if (row.value - told < STEP) continue;
      told = row.value;
      tell({ kind: 'progress', share: told });
    }
    tell({ kind: 'table', text: encodeTable(row.value) });
  }
  return (ask) => {
    try {
      if (ask.kind === 'table') table(ask);
      else tell({ kind: 'sound', sound: soundOf(ask.sheet) });
    } catch {
      tell({ kind: 'failed' });
    }
  };
}
