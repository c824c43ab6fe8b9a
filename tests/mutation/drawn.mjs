// Stryker takes ranges of a file, and a range holds everything inside it. So only what was drawn is let through; what became of
// each change is written down at once, a line each.
import { appendFileSync, readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { PluginKind, declareClassPlugin } from '@stryker-mutator/api/plugin';

const { MUTATION_ROOT, MUTATION_DRAWN, MUTATION_ENDED } = process.env;
const NOT_DRAWN = 'not drawn';

/** @param first what the first line and column are called */
const keyOf = ({ fileName, location: { start, end }, mutatorName, replacement }, first) =>
  JSON.stringify([
    relative(MUTATION_ROOT, fileName).replaceAll('\\', '/'),
    [start.line, start.column, end.line, end.column].map((place) => place - first),
    mutatorName,
    replacement,
  ]);

class Drawn {
  #drawn = new Set();

  async init() {
    this.#drawn = new Set(JSON.parse(readFileSync(MUTATION_DRAWN, 'utf8')));
  }

  async check(mutants) {
    const result = (mutant) =>
      this.#drawn.has(keyOf(mutant, 0))
        ? { status: 'passed' }
        : { status: 'compileError', reason: NOT_DRAWN };
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, result(mutant)]));
  }

  async group(mutants) {
    return [mutants.map(({ id }) => id)];
  }
}

class Ended {
  onMutantTested(mutant) {
    if (mutant.statusReason === NOT_DRAWN) return;
    const line = JSON.stringify({ key: keyOf(mutant, 1), status: mutant.status });
    appendFileSync(MUTATION_ENDED, `${line}\n`);
  }
}

export const strykerPlugins = [
  declareClassPlugin(PluginKind.Checker, 'drawn', Drawn),
  declareClassPlugin(PluginKind.Reporter, 'ended', Ended),
];
