/** Makes ordinary questions of one that varies, and shuts out the settings in which it would not be a good one. */
import { isApart } from '../quiz/apart.ts';
import { passageText, type Asked, type Varied } from '../quiz/asked.ts';
import { resolveQuestion } from '../quiz/resolve.ts';
import type { Question } from '../quiz/schema.ts';
import { seedOf } from '../quiz/seeded-order.ts';
import { inSetting, type Variation } from '../quiz/vary.ts';
import { drawSettings } from '../variations/draw.ts';
import { familyNamed, variationOf } from '../variations/index.ts';
import type { Setting } from '../variations/family.ts';
import { madeByEngine } from './made-by-engine.ts';
import { numberNamed } from './number-named.ts';

/** Variants of a question that varies. */
export const VARIANTS = 6;

export interface Variant {
  readonly setting: Setting;
  readonly variation: Variation;
  readonly question: Question;
}

const kept = new Map<string, readonly Variant[]>();

/** None for a question that stands as it is. @throws Error if its family has too few good settings for it */
export function variantsOf(question: Question): readonly Variant[] {
  const { varies } = question;
  if (varies === undefined) return [];
  const key = JSON.stringify(question);
  const before = kept.get(key);
  if (before !== undefined) return before;
  const found = draw(question, varies);
  kept.set(key, found);
  return found;
}

function draw(question: Question, varies: string): readonly Variant[] {
  const make = (setting: Setting): Variant | undefined => {
    const variation = variationOf(varies, setting);
    return variation && { setting, variation, question: inSetting(question, variation) };
  };
  const read = new Set<string>();
  const keep = (setting: Setting): boolean => {
    const variant = make(setting);
    if (variant === undefined) return false;
    const asked = resolveQuestion(typed(variant.question), numberNamed, madeByEngine);
    // What the reader sees of a setting may be the same as of another: a sound car is sound, whatever it was spared.
    const seen = passageText(asked.stem, 'si');
    if (read.has(seen) || !isApart(asked)) return false;
    read.add(seen);
    return true;
  };
  const settings = drawSettings(familyNamed(varies), seedOf(question.id), VARIANTS, keep);
  if (settings.length < VARIANTS) {
    throw new Error(
      `The family "${varies}" has ${settings.length} good settings for the question "${question.id}", and ${VARIANTS} are needed. Widen its ranges, or bring the wrong rules further from the right value.`,
    );
  }
  return settings.map(make).filter((one) => one !== undefined);
}

/** An amount to choose is judged as one to type: its options no longer have their values. */
const typed = (question: Question): Question =>
  question.kind === 'number'
    ? { ...question, number: { ...question.number, entry: 'type' } }
    : question;

/** As it stands where nothing varies: in the first of its variants. */
export const inFirst = (question: Question): Question =>
  variantsOf(question)[0]?.question ?? question;

/** A question as asked, with its other variants. */
export function askedOf(question: Question): Varied {
  const all = variantsOf(question).map(({ question: one, variation }): Asked => ({
    ...resolveQuestion(one, numberNamed, madeByEngine),
    variant: variation.id,
  }));
  const [first, ...others] = all;
  return first === undefined
    ? resolveQuestion(question, numberNamed, madeByEngine)
    : { ...first, others };
}
