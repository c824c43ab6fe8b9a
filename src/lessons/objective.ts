export interface Objective<Id extends string = string> {
  readonly lesson: string;
  readonly id: Id;
  readonly text: string;
}

/** The number that each of a lesson's texts gets, five at most. */
interface Numbers {
  '0': '1';
  '1': '2';
  '2': '3';
  '3': '4';
  '4': '5';
}
type Numbered<Prefix extends string, Texts extends readonly string[]> = {
  readonly [
    At in keyof Texts
  ]: Objective<`${Prefix}-${At extends keyof Numbers ? Numbers[At] : never}`>;
};

/** The objectives of one lesson, numbered under a prefix. The ids are the same in every language, and each is a type. */
export const of = <const Prefix extends string, const Texts extends readonly string[]>(
  lesson: string,
  prefix: Prefix,
  ...texts: Texts
): Numbered<Prefix, Texts> =>
  texts.map((text, i) => ({ lesson, id: `${prefix}-${i + 1}`, text })) as unknown as Numbered<
    Prefix,
    Texts
  >;
