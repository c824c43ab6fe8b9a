/** The readings stay with the page in the history of the tab, so that Reload and Back bring them back; they go with it. */
import { namedAsRequest, readQuestion, type TakenReading } from '../../diagnosis/index.ts';

const KEPT = 'nextTest';
const ON = 'nextTestOn';

/** Writes the readings down as a request has them. */
export function keep(readings: readonly TakenReading[]): void {
  const said = readings.map(({ test, value }) => ({ ...namedAsRequest(test), value }));
  history.replaceState({ ...(history.state as object | null), [KEPT]: said }, '');
}

/** Writes down which transmission they were taken on. */
export function keepOn(which: string): void {
  history.replaceState({ ...(history.state as object | null), [ON]: which }, '');
}

export function keptOn(): string {
  const said = (history.state as { readonly [ON]?: unknown } | null)?.[ON];
  return typeof said === 'string' ? said : 'training';
}

/** What was kept; nothing where nothing was, or nothing that can be read. */
export function kept(): readonly TakenReading[] {
  const said = (history.state as { readonly [KEPT]?: unknown } | null)?.[KEPT];
  const read = readQuestion({ readings: said ?? [] });
  return 'error' in read ? [] : read.readings;
}
