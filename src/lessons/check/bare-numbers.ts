/**
 * Measured numbers in prose that are neither computed by the engine nor sourced or marked within their sentence, nor
 * declared as givens. A typed number is true until somebody changes the model.
 */
import type { Placed } from './fault.ts';

/** Digits with a unit, as somebody would type them. */
const unit =
  '(?:k?Pa|MPa|bar|psi|°\\s?[CF]|L\\/min|L|litres?|gallons?|gpm|rpm|mm|cm[²³]?|in[²³]?|inch(?:es)?|µm|m|km\\/h|mph|N·m|lbf·ft|N|lbf|kg|kW|g\\/s|cSt|mPa·s|kg\\/m³|%|percent|s|ms|seconds?|minutes?|min|hours?|h|degrees|thousandths|volts?|V|ohms?|A)(?:\\/[\\p{L}²³]+)?';
const measured = new RegExp(
  `(?<![\\p{L}\\d.])\\d[\\d.,]*[\\s\\u00a0\\u202f]?${unit}(?![\\p{L}\\d])`,
  'gu',
);
const sentenceEnd = /(?<=[.!?]["”’)]?)\s+|\n\s*\n/g;

/** Stands where a source or the mark for none stood. */
const SOURCED = '\u00a7';
/** Nobody's measurement: notes, formulas, computed numbers, fault codes. */
const notProse =
  /\{\/\*[^]*?\*\/\}|\$\$[^]*?\$\$|\$[^$\n]*\$|<(?:Num|Sum)\s[^>]*\/>|\bP[0-3][\dA-F]{3}\b/g;
/** The mark for what has no source, in each language; words may stand before it in the same brackets. */
const sourced =
  /<Src\s[^>]*\/>|\((?:[^()]*[;:] )?(?:common practice, no source|práctica común, sin fuente)\.?\)/g;

/** A text of the same length, so that every place stays where it is. */
const masked = (text: string): string =>
  text
    .replace(notProse, hidden)
    .replace(sourced, (mark) => SOURCED + hidden(mark.slice(SOURCED.length)));
const hidden = (words: string): string => words.replace(/[^\n]/g, ' ');

export function measuredNumbers(text: string): readonly { offset: number; words: string }[] {
  const found: { offset: number; words: string }[] = [];
  const kept = masked(text);
  let from = 0;
  for (const end of [...kept.matchAll(sentenceEnd), { index: kept.length, 0: '' }]) {
    const sentence = kept.slice(from, end.index);
    if (!sentence.includes(SOURCED)) {
      for (const { index, 0: words } of sentence.matchAll(measured))
        found.push({ offset: from + index, words: words.trim() });
    }
    from = end.index + end[0].length;
  }
  return found;
}

export interface Givens {
  /** Numbers the lesson declares, each with the reason why it needs no source. */
  readonly reasons: Readonly<Record<string, string>>;
  readonly placeOf: (given: string) => number;
}

/** Numbers in `text` from `bodyAt` on that need a source, and declared ones that are not there. */
export function checkBareNumbers(text: string, bodyAt: number, givens: Givens): readonly Placed[] {
  const found = measuredNumbers(hidden(text.slice(0, bodyAt)) + text.slice(bodyAt));
  const bare = found
    .filter(({ words }) => !Object.hasOwn(givens.reasons, words))
    .map(({ offset, words }) => ({
      offset,
      sentence: `"${words}" is a typed number without a source in its sentence. Use <Num id="…" /> for one that the model computes, put <Src id="…" /> after it, or write "(common practice, no source)". One that is nobody's result stands under "givens" in the front matter, with its reason.`,
    }));
  const unused = Object.keys(givens.reasons)
    .filter((given) => !found.some(({ words }) => words === given))
    .map((given) => ({
      offset: givens.placeOf(given),
      sentence: `The given "${given}" is nowhere in the lesson without a source. Take it out, or write it as it stands in the text.`,
    }));
  return [...bare, ...unused];
}
