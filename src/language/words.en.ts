import type { LanguageId } from './languages.ts';

/** Swapped like every other file of words, and so the one place that knows what is being built. */
export const words = { id: 'en' as LanguageId };
