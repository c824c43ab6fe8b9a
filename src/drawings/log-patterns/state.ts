import { words } from './words.en.ts';

export const describeLogPatterns = (): string => words.describe;
