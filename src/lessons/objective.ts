export interface Objective {
  readonly lesson: string;
  readonly id: string;
  readonly text: string;
}

/** The objectives of one lesson, numbered under a prefix. The ids are the same in every language. */
export const of = (
  lesson: string,
  prefix: string,
  ...texts: readonly string[]
): readonly Objective[] => texts.map((text, i) => ({ lesson, id: `${prefix}-${i + 1}`, text }));
