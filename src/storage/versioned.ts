/** Data of a form that has changed over time, read in whichever version it was written. */

export interface Form<T> {
  readonly name: string;
  readonly version: number;
  /** Nothing for data that is not T. Everything read goes through it. */
  readonly parse: (data: unknown) => T | undefined;
  /** From version n to n + 1, by n. Kept for ever, with a fixture each. */
  readonly upgrade?: Readonly<Record<number, (old: unknown) => unknown>>;
}

export type Versioned<T> =
  | { readonly kind: 'good'; readonly data: T }
  | { readonly kind: 'newer' }
  | { readonly kind: 'bad' };

/** @throws whatever an upgrade throws on data that is none of its version */
export function readVersioned<T>(
  { version, parse, upgrade = {} }: Pick<Form<T>, 'version' | 'parse' | 'upgrade'>,
  written: number,
  data: unknown,
): Versioned<T> {
  if (written > version) return { kind: 'newer' };
  let now = data;
  for (let from = written; from < version; from += 1) {
    const step = upgrade[from];
    if (step === undefined) return { kind: 'bad' };
    now = step(now);
  }
  const good = parse(now);
  return good === undefined ? { kind: 'bad' } : { kind: 'good', data: good };
}

export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0;
}
