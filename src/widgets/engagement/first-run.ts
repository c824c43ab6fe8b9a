import { makeModel, type FirstRun } from './model.ts';

/** Without the solver's own trace, and to six digits: finer than anything that is printed of it. */
const brief = (key: string, value: unknown): unknown =>
  key === 'trace' ? undefined : typeof value === 'number' ? Number(value.toPrecision(6)) : value;

/** The cold run that the simulation opens with, solved when the page is built. */
export function firstRun(): string {
  const { times, cold } = makeModel();
  const first: FirstRun = { times, cold: cold.peek() };
  return JSON.stringify(first, brief);
}
