import { makeModel, OPENING, type Opening, type Run } from './model.ts';

/** The first row of every column. */
const firstOf = <T extends object>(columns: T): T =>
  Object.fromEntries(
    Object.entries(columns).map(([name, column]) => [name, [(column as Float64Array)[0]]]),
  ) as T;

function firstRow({ solved, motion, turbine, clutch, wanted, line, gaveUp }: Run): Run {
  const { trace, states, ...rest } = solved;
  return {
    solved: { ...rest, trace: firstOf(trace), states: states.slice(0, 1), events: [] },
    motion: firstOf(motion),
    ...firstOf({ turbine, clutch, wanted, line }),
    gaveUp,
  };
}

/** What the simulation opens with, solved when the page is built. */
export function openingText(): string {
  const { times, cold, hot, apply } = makeModel();
  apply(OPENING);
  const opening: Opening = { times, cold: firstRow(cold.value), hot: firstRow(hot.value) };
  return JSON.stringify(opening);
}
