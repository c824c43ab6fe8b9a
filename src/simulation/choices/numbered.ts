import type { ChoiceSpec } from '../sim-spec.ts';

/** Cars by their number, from 1, in a list: what each has is for the reader to find out. */
export const numberedControl = <K extends string>(
  key: K,
  label: string,
  count: number,
  named: (p: { number: string }) => string,
) =>
  ({
    kind: 'choice',
    key,
    label,
    as: 'select',
    options: Array.from({ length: count }, (_, i) => ({
      value: String(i + 1),
      words: named({ number: String(i + 1) }),
    })),
  }) satisfies ChoiceSpec<Record<K, string>>;
