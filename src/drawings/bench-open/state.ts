import { words } from './words.en.ts';

export const describeBenchOpen = (): string => words.describe;
