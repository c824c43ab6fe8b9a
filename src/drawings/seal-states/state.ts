import { words } from './words.en.ts';

export const describeSealStates = (): string => words.describe;
