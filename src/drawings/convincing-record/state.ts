import { words } from './words.en.ts';

export const describeConvincingRecord = (): string => words.describe;
