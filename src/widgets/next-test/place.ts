/** The readings stay with the page in the history of the tab, so that Reload and Back bring them back; they go with it. */
import { namedAsRequest, readQuestion, type TakenReading } from '../../diagnosis/index.ts';

const KEPT = 'nextTest';

/** Writes the readings down as a request has them. */
export function keep(readings: readonly TakenReading[]): void {
  const said = readings.map(({ test, value }) => ({ ...namedAsRequest(test), value }));
  history.replaceState({ ...(history.state as object | null), [KEPT]: said }, '');
}

/** What was kept; nothing where nothing was, or nothing that can be read. */
export function kept(): readonly TakenReading[] {
  const said = (history.state as { readonly [KEPT]?: unknown } | null)?.[KEPT];
  const read = readQuestion({ readings: said ?? [] });
  return 'error' in read ? [] : read.readings;
}
