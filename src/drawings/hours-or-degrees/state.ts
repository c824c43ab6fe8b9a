import { words } from './words.en.ts';

export const describeHoursOrDegrees = (): string => words.describe;
