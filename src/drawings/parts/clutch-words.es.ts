import type { words as en } from './clutch-words.en.ts';

export const words: typeof en = { piston: 'Pistón', spring: 'Resorte de retorno' };
