import { describe, expect, it } from 'vitest';

/**
 * How far an expected number can be trusted.
 * printed: the source prints it. computed: worked out by hand from a formula or inputs the source prints.
 * memory: from memory of the source; nobody here has read it there.
 */
export type Status = 'printed' | 'computed' | 'memory';

export interface PublishedCheck {
  readonly what: string;
  /** Standard, book or paper with its example, table or equation number. */
  readonly source: string;
  readonly status: Status;
  readonly got: () => number;
  readonly expected: number;
  /** Widest difference allowed, as a share of the expected value or in its own unit. */
  readonly within: { readonly relative: number } | { readonly absolute: number };
  /** Why the tolerance is what it is. */
  readonly because: string;
}

/** One test a check. A check that yields no value fails, and so does a list without checks. */
export function published(subject: string, checks: readonly PublishedCheck[]): void {
  describe(subject, () => {
    if (checks.length === 0) throw new Error(`${subject}: no checks`);
    for (const check of checks) {
      it(`${check.what} (${check.source}; ${check.status})`, () => {
        const got = check.got();
        expect(Number.isFinite(check.expected), 'the source gives a value').toBe(true);
        expect(Number.isFinite(got), `the engine gives a value, not ${got}`).toBe(true);
        const allowed =
          'relative' in check.within
            ? check.within.relative * Math.abs(check.expected)
            : check.within.absolute;
        expect(
          Math.abs(got - check.expected),
          `${got} against ${check.expected}, allowed ${allowed}: ${check.because}`,
        ).toBeLessThanOrEqual(allowed);
      });
    }
  });
}

/** Pairs two rows of a table; a table whose rows differ in length is a slip of the typist and fails. */
export function columns(first: readonly number[], second: readonly number[]): [number, number][] {
  if (first.length === 0 || first.length !== second.length) {
    throw new Error(`Table rows of ${first.length} and ${second.length} entries`);
  }
  return first.map((value, index) => [value, second[index] as number]);
}
