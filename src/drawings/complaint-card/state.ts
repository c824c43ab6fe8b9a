import { words } from './words.en.ts';

export const describeComplaintCard = (): string => words.describe;
