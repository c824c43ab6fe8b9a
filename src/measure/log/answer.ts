import {
  analyse,
  cleaned,
  cut,
  findLayout,
  leftOut,
  MOST_ROWS,
  readSeries,
  readTable,
  sayings,
  textOf,
  type Mapping,
  type Ratios,
  type Series,
  type Table,
} from '../../log/index.ts';
import type { Answer, Ask } from './messages.ts';

/** An engagement is drawn from here to here [s after selection]. */
export const DRAWN = { from: -0.5, to: 8 } as const;

/** What works on one log: it holds the readings, so that the page need not. Answers are told as they come. */
export function logWork(tell: (answer: Answer) => void): (ask: Ask) => Promise<void> {
  let table: Table | undefined;
  let series: Series | undefined;
  let clean: Series | undefined;

  async function open(file: Blob, given: (Ask & { kind: 'open' })['given']): Promise<void> {
    table = undefined;
    series = undefined;
    const text = textOf(new Uint8Array(await file.arrayBuffer()));
    if (typeof text !== 'string') {
      tell({ kind: 'refused', trouble: text });
      return;
    }
    const layout = findLayout(text, given);
    if (layout === undefined) {
      tell({ kind: 'refused', trouble: { kind: 'noTable' } });
      return;
    }
    let told = 0;
    table = readTable(text, layout, (share) => {
      if (share - told < 0.02) return;
      told = share;
      tell({ kind: 'progress', share });
    });
    if (table.rows > MOST_ROWS) {
      tell({ kind: 'refused', trouble: { kind: 'tooLarge', rows: table.rows } });
      return;
    }
    tell({
      kind: 'opened',
      layout,
      rows: table.rows,
      skipped: table.skipped.count,
      sayings: table.columns.map((column) => {
        const all = sayings(column);
        return all.length > 20 ? [] : all;
      }),
    });
  }

  function read(mapping: Mapping, ratios: Ratios): void {
    if (table === undefined) return;
    const { series: found, troubles } = readSeries(table, mapping);
    series = found;
    const left = leftOut(table, mapping);
    if (found === undefined) {
      tell({ kind: 'read', troubles, left, cuts: [] });
      return;
    }
    const speeds = cleaned(found);
    clean = speeds;
    const log = analyse(found, ratios);
    const cuts = log.engagements.map(({ at, selection: { range } }) =>
      cut(
        found,
        {
          from: at + DRAWN.from,
          to: at + DRAWN.to,
          zero: at,
          ratio: range === 'reverse' ? ratios.reverse : ratios.drive,
        },
        speeds,
      ),
    );
    tell({ kind: 'read', troubles, log, left, cuts });
  }

  return async (ask) => {
    try {
      if (ask.kind === 'open') await open(ask.file, ask.given);
      else if (ask.kind === 'read') read(ask.mapping, ask.ratios);
      else if (series !== undefined) {
        tell({ kind: 'cut', cut: cut(series, ask, clean) });
      }
    } catch {
      tell({ kind: 'failed' });
    }
  };
}
