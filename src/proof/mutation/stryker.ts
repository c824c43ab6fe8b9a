/** Runs Stryker, which lives in a folder of its own: its Babel does not go with the one that the site is built with. */
import { spawnSync, type SpawnSyncOptions } from 'node:child_process';
import { existsSync, globSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../run.ts';
import { LEFT_OUT, type Reach } from './modules.ts';
import { placeKey, type Mutant, type ToldMutant } from './mutants.ts';

const HOME = join(root, 'tests', 'mutation');
const LEFT = join(root, 'test-results', 'mutation');

function must(program: string, args: readonly string[], options: SpawnSyncOptions): string {
  const { status, stdout, error } = spawnSync(program, args, {
    cwd: root,
    maxBuffer: 1e9,
    ...options,
  });
  if (error) throw error;
  if (status !== 0) throw new Error(`${program} ${args.join(' ')} ended with ${String(status)}.`);
  return String(stdout);
}

export function install(): void {
  if (existsSync(join(HOME, 'node_modules'))) return;
  const shell = process.platform === 'win32';
  must('npm', ['ci', '--no-audit', '--no-fund'], { cwd: HOME, stdio: 'inherit', shell });
}

/** Every change that could be made to a module. */
export function mutantsOf(name: string): readonly Mutant[] {
  const files = globSync(`src/${name}/**/*.ts`, { cwd: root, exclude: [...LEFT_OUT] })
    .map((file) => file.replaceAll('\\', '/'))
    .toSorted();
  const input = JSON.stringify(files);
  return JSON.parse(
    must(process.execPath, [join(HOME, 'list.mjs')], {
      input,
      stdio: ['pipe', 'pipe', 'inherit'],
    }),
  ) as Mutant[];
}

export type Status =
  'Killed' | 'Timeout' | 'Survived' | 'NoCoverage' | 'RuntimeError' | 'CompileError' | 'Ignored';

export const NOTICED: readonly Status[] = ['Killed', 'Timeout'];
export const MISSED: readonly Status[] = ['Survived', 'NoCoverage'];

const endedFile = (name: string): string => join(LEFT, `${name}.ended.jsonl`);
export const forget = (name: string): void => rmSync(endedFile(name), { force: true });

/** What is written down so far; of two lines on one change the later counts. */
function readEnded(name: string): ReadonlyMap<string, Status> {
  const file = endedFile(name);
  const lines = existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : [];
  return new Map(
    lines
      .filter((line) => line !== '')
      .map((line) => {
        const { key, status } = JSON.parse(line) as { key: string; status: Status };
        return [key, status];
      }),
  );
}

/** What became of each change, in the order in which they were given. Only what is not known, or was missed, is asked. */
export function tryOut(
  name: string,
  reach: Reach,
  asked: readonly ToldMutant[],
): readonly Status[] {
  const before = readEnded(name);
  const mutants = asked.filter((mutant) => {
    const status = before.get(placeKey(mutant));
    return status === undefined || MISSED.includes(status);
  });
  if (mutants.length > 0) run(name, reach, mutants);
  const became = readEnded(name);
  return asked.map((mutant) => {
    const status = became.get(placeKey(mutant));
    if (status === undefined) throw new Error(`Stryker says nothing of ${placeKey(mutant)}.`);
    return status;
  });
}

function run(name: string, reach: Reach, mutants: readonly ToldMutant[]): void {
  mkdirSync(LEFT, { recursive: true });
  const file = (what: string): string => join(LEFT, `${name}.${what}.json`);
  writeFileSync(file('drawn'), JSON.stringify(mutants.map(placeKey)));
  const options = {
    mutate: mutants.map(
      ({ fileName, location: { start, end } }) =>
        `${fileName}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`,
    ),
    plugins: ['@stryker-mutator/vitest-runner', join(HOME, 'drawn.mjs')],
    checkers: ['drawn'],
    testRunner: 'vitest',
    vitest: { configFile: 'tests/mutation/vitest.config.ts' },
    coverageAnalysis: 'perTest',
    concurrency: 2,
    timeoutMS: 20_000,
    timeoutFactor: 2,
    dryRunTimeoutMinutes: 30,
    disableTypeChecks: false,
    ignorePatterns: ['dist', 'dist.*', '.astro', '.cache', 'test-results', 'node_modules.*'],
    tempDirName: `test-results/mutation/${name}.sandbox`,
    reporters: ['progress-append-only', 'ended'],
    warnings: { slow: false },
    allowConsoleColors: false,
  };
  writeFileSync(file('options'), JSON.stringify(options));
  const stryker = join(HOME, 'node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js');
  must(process.execPath, [stryker, 'run', file('options')], {
    stdio: 'inherit',
    env: {
      ...process.env,
      MUTATION_OF: name,
      MUTATION_REACH: reach,
      MUTATION_ROOT: root,
      MUTATION_DRAWN: file('drawn'),
      MUTATION_ENDED: endedFile(name),
    },
  });
}
