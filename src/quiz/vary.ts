/**
 * Questions that vary. As authored, one names the family that its numbers come from; a setting of the family makes an ordinary
 * question of it, which everything else reads as if it had been written so.
 */
import type { Question } from './schema.ts';

/** What one setting of a family says of a question. */
export interface Variation {
  /** The setting in short: kept with an answer, so that it stays readable. */
  readonly id: string;
  /** Where its numbers stand in full, by the short name that the question uses. */
  readonly numbers: Readonly<Record<string, string>>;
  /** Which of the words in `[[name: case = words | other = words]]` stand. */
  readonly cases: Readonly<Record<string, string>>;
  /** Which options are true; those left out are as written. */
  readonly truth: Readonly<Record<string, boolean>>;
}

/** The question in one setting. @throws Error if its words name a choice or a case that the setting does not have */
export function inSetting(question: Question, variation: Variation): Question {
  const read = (text: string): string => named(chosen(text, variation), variation);
  const plain = mapWords(question, read) as Question;
  if (plain.kind === 'number') {
    const key = variation.numbers[plain.number.key] ?? plain.number.key;
    return { ...plain, number: { ...plain.number, key } };
  }
  if (plain.kind !== 'single' && plain.kind !== 'several') return plain;
  const options = plain.options.map((option) => ({
    ...option,
    correct: variation.truth[option.id] ?? option.correct,
  }));
  return { ...plain, options };
}

/** Every text in it; what is no sentence has neither brackets nor braces, and stays as it is. */
function mapWords(value: unknown, read: (text: string) => string): unknown {
  if (typeof value === 'string') return read(value);
  if (Array.isArray(value)) return value.map((one) => mapWords(one, read));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, mapWords(one, read)]));
}

const choice = /\[\[\s*([\w-]+)\s*:([^[\]]*)\]\]/g;

const chosen = (text: string, { cases, truth }: Variation): string =>
  text.replace(choice, (_, name: string, body: string) => {
    const said = truth[name];
    const wanted = cases[name] ?? (said === undefined ? undefined : said ? 'right' : 'wrong');
    if (wanted === undefined) {
      const known = [...Object.keys(cases), ...Object.keys(truth)];
      throw new Error(`[[${name}: …]] is no choice here. There is: ${known.join(', ') || 'none'}.`);
    }
    const words = new Map(
      body.split('|').map((one) => {
        const at = one.indexOf('=');
        return [one.slice(0, at).trim(), one.slice(at + 1).trim()];
      }),
    );
    const found = words.get(wanted);
    if (found === undefined) {
      throw new Error(`[[${name}: …]] has no words for "${wanted}": write "${wanted} = …" in it.`);
    }
    return found;
  });

const named = (text: string, { numbers }: Variation): string =>
  text.replace(/\{=\s*([\w-]+)\s*\}/g, (_, name: string) => `{= ${numbers[name] ?? name}}`);
