/** From this size on a script is worth the line [characters]: below it there is little to compile. */
const WORTH = 3000;

/**
 * A hint to V8, at the top of each larger script of a page: its functions are compiled while it loads, away from the page's
 * thread, and not one by one as an island calls them. That took half of the longest task in which a simulation comes alive.
 * Other engines read a comment. Source: "Explicit compile hints", v8.dev, 2025.
 */
export const COMPILE_AHEAD = '//# allFunctionsCalledOnLoad\n';

interface Chunk {
  readonly type: string;
  code?: string;
}

export const compileAhead = () => ({
  name: 'compile-ahead',
  applyToEnvironment: ({ name }: { readonly name: string }): boolean => name === 'client',
  generateBundle: {
    order: 'post' as const,
    handler(_: unknown, bundle: Readonly<Record<string, Chunk>>): void {
      for (const chunk of Object.values(bundle)) {
        if (chunk.type === 'chunk' && (chunk.code?.length ?? 0) >= WORTH) {
          chunk.code = COMPILE_AHEAD + (chunk.code ?? '');
        }
      }
    },
  },
});
