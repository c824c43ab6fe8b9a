import type { Test } from '../diagnosis/index.ts';
import { useUnits } from '../ui/use-units.ts';
import { cautionsFor } from './cautions.ts';

/** What stands before a test that can hurt somebody; nothing for one that cannot. */
export function BeforeTest({ test }: { readonly test: Test }) {
  const cautions = cautionsFor(test, useUnits());
  return cautions.length === 0 ? null : <p class="before-test">{cautions.join(' ')}</p>;
}
