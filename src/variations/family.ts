import type { Entries, WrongRule } from '../numbers/entry.ts';

/** What a family is set to: a transmission, a temperature, a crack, ... */
export type Setting = Readonly<Record<string, string | number>>;

/** All that a question says in one setting. */
export interface Made {
  readonly numbers: Entries;
  /** Choices of words that follow from the setting; its own texts are choices by themselves. */
  readonly cases?: Readonly<Record<string, string>>;
  /** Which options of the question are true. */
  readonly truth?: Readonly<Record<string, boolean>>;
}

/** Where the numbers of a question come from that has other ones each time it is asked. */
export interface Family {
  /** What each part of a setting may be. */
  readonly ranges: Readonly<Record<string, readonly (string | number)[]>>;
  /** Nothing where the setting makes no good question. */
  readonly make: (setting: Setting) => Made | undefined;
}

type Parts<Ranges> = {
  readonly [Part in keyof Ranges]: Ranges[Part] extends readonly (infer One)[] ? One : never;
};

/** A family, with the parts of its setting typed by their ranges. */
export const family = <const Ranges extends Family['ranges']>(
  ranges: Ranges,
  make: (setting: Parts<Ranges>) => Made | undefined,
): Family => ({ ranges, make: (setting) => make(setting as Parts<Ranges>) });

/** From, to and all between, so far apart. */
export const steps = (from: number, to: number, by: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, i) =>
    Number((from + i * by).toPrecision(9)),
  );

/** A setting in short, and back. */
export const idOf = ({ ranges }: Family, setting: Setting): string =>
  Object.keys(ranges)
    .map((part) => String(setting[part]))
    .join(',');

export function settingOf({ ranges }: Family, id: string): Setting | undefined {
  const values = id.split(',');
  const parts = Object.entries(ranges).map(([part, range], i) => [
    part,
    range.find((one) => String(one) === values[i]),
  ]);
  const setting = parts.filter((one): one is [string, string | number] => one[1] !== undefined);
  return setting.length === values.length && setting.length === parts.length
    ? Object.fromEntries(setting)
    : undefined;
}

/** A wrong rule: what the mistake is, as it completes "You get this if you …", and where it leads. */
export const by = (mistake: string, value: number): WrongRule => ({ mistake, value });
