import { fromFile, type BenchCase, type CasePageFile } from './bench-case.ts';
import { searchOf, type Asked } from './case-address.ts';

export type Loaded =
  | { readonly kind: 'case'; readonly bench: BenchCase; readonly search: string }
  | { readonly kind: 'unknown'; readonly id: string }
  | { readonly kind: 'bad-made' }
  | { readonly kind: 'none' }
  | { readonly kind: 'failed' };

/** Fetches or makes the car that a link asks for. Never throws. */
export async function loadCase(asked: Asked): Promise<Loaded> {
  if (asked.kind === 'none' || asked.kind === 'bad-made') return asked;
  const search = searchOf(asked);
  try {
    if (asked.kind === 'made') {
      const [{ benchCaseOf }, { loadTable }] = await Promise.all([
        import('./made-case.ts'),
        import('./load-planner.ts'),
      ]);
      const bench = benchCaseOf(asked.key, await loadTable(asked.key.on));
      return { kind: 'case', bench, search };
    }
    if (!/^[a-z0-9-]+$/.test(asked.id)) return { kind: 'unknown', id: asked.id };
    const answer = await fetch(`/practise/cases/${asked.id}.json`);
    if (answer.status === 404) return { kind: 'unknown', id: asked.id };
    if (!answer.ok) return { kind: 'failed' };
    return { kind: 'case', bench: fromFile((await answer.json()) as CasePageFile), search };
  } catch {
    return { kind: 'failed' };
  }
}
