import type { words as en } from './words.en.ts';

export const words: typeof en = {
  circuits: { forward: 'Avance', reverse: 'Reversa', high: 'Alta' },
  ranges: { park: 'Park', reverse: 'Reversa', neutral: 'Neutral', drive: 'Drive' },
};
