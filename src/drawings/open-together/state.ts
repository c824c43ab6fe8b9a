import { words } from './words.en.ts';

export const describeOpenTogether = (): string => words.describe;
