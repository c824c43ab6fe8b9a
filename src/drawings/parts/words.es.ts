import type { words as en } from './words.en.ts';

export const words: typeof en = { holds: 'agarra', slips: 'patina' };
