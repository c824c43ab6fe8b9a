import { isFault } from '../diagnosis/index.ts';
import type { Advice } from './model.ts';
import { words } from './now-words.en.ts';

/** What to do when no test is worth its minutes: a look inside is advised only at a part that stands first, and on readings that go together. */
export function noTestLeft({ faults: [top], clash }: Pick<Advice, 'faults' | 'clash'>): string {
  if (clash === true) return words.again;
  return top !== undefined && isFault(top.fault) ? words.done : words.noPart;
}
