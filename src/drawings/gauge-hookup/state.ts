import { words } from './words.en.ts';

export const describeGaugeHookup = (): string => words.describe;
