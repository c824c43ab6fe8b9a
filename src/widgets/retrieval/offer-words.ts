import { words } from './words.en.ts';

/** The words of the offer. They travel in the page and not in the script, which every lesson pays for. */
export function offerWords(count: number, total: number) {
  return { ...words.offer, intro: words.intro(String(count), String(total)) };
}
export type OfferWords = ReturnType<typeof offerWords>;
