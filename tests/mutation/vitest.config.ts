/** The tests that are asked whether they notice a wrong change; they run in Stryker's copy of the repository. */
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { testsOf } from '../../src/proof/mutation/modules.ts';

const { MUTATION_OF: mutated = '', MUTATION_REACH: reach } = process.env;

/** By name, the second programs at the end: they take the longest. */
class QuickFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number => (moduleId.includes('rival') ? 1 : 0);
    return Promise.resolve(
      files.toSorted((a, b) => rank(a) - rank(b) || a.moduleId.localeCompare(b.moduleId)),
    );
  }
}

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: testsOf(mutated, reach === 'far' ? 'far' : 'near'),
    // They read the text of the source, which is not what a wrong change is to be noticed by.
    exclude: ['tests/engine/docstrings.test.ts', '**/node_modules/**'],
    setupFiles: ['tests/mutation/setup.ts'],
    sequence: { sequencer: QuickFirst },
    // Stryker keeps the time: what hangs counts as noticed.
    testTimeout: 600_000,
  },
});
