import { words } from './words.en.ts';

export const describeBridgeSeat = (): string => words.describe;
