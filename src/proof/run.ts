/** Runs what measures, and gathers what it left behind. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readLeft, type Figure } from './form.ts';

export const root = fileURLToPath(new URL('../..', import.meta.url));
const LEFT = join(root, 'test-results', 'quality');

/** A program of the packages, as `npm run` would find it. */
export function run(program: string, args: readonly string[], quiet = false) {
  return spawnSync(join(root, 'node_modules', '.bin', program), args, {
    cwd: root,
    encoding: 'utf8',
    stdio: ['ignore', quiet ? 'pipe' : 'inherit', quiet ? 'pipe' : 'inherit'],
    shell: process.platform === 'win32',
  });
}

/** The figures that a run of tests leaves; one line more if it fails. */
export function leftBy(program: string, args: readonly string[], command: string): Figure[] {
  rmSync(LEFT, { recursive: true, force: true });
  const { status } = run(program, args);
  const figures = existsSync(LEFT)
    ? readdirSync(LEFT)
        .filter((name) => name.endsWith('.json'))
        .toSorted()
        .flatMap((name) => readLeft(readFileSync(join(LEFT, name), 'utf8')))
    : [];
  if (status === 0) return figures;
  const what = `All of ${[program, ...args].join(' ')}`;
  return [...figures, { what, value: 'failed', bar: 'passes', met: false, command }];
}

/** What a program wrote into the report that it was told of, and how it ended. */
export function reportOf(write: (file: string) => ReturnType<typeof run>) {
  const folder = mkdtempSync(join(tmpdir(), 'proof-'));
  const file = join(folder, 'report.json');
  const { status } = write(file);
  const report: unknown = JSON.parse(readFileSync(file, 'utf8'));
  rmSync(folder, { recursive: true });
  return { status, report };
}

interface JsonReport {
  readonly testResults: readonly {
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

/** What became of each unit test in the files, by its full name. */
export function unitTests(files: readonly string[]): ReadonlyMap<string, boolean> {
  const { report } = reportOf((file) =>
    run(
      'vitest',
      ['run', '--project', 'unit', '--reporter=json', `--outputFile=${file}`, ...files],
      true,
    ),
  );
  const { testResults } = report as JsonReport;
  return new Map(
    testResults.flatMap(({ assertionResults }) =>
      assertionResults.map(({ fullName, status }) => [fullName, status === 'passed'] as const),
    ),
  );
}
