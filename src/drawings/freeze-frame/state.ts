import { words } from './words.en.ts';

export const describeFreezeFrame = (): string => words.describe;
