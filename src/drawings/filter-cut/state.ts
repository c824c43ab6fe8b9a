import { words } from './words.en.ts';

export const describeFilterCut = (): string => words.describe;
