import type { Family } from './family.ts';
import { slip } from './slip.ts';

export const families: Readonly<Record<string, Family>> = { ...slip };
