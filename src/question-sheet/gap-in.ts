import type { Gap } from '../quiz/on-paper/put-parts.ts';
import { words } from './words.en.ts';

export const gapIn = (gap: Gap): string =>
  gap === 0 ? words.paper.beforeFirst : words.paper.afterStep({ step: String(gap) });
