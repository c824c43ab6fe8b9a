/** What can be said of package-lock.json without asking anybody, and what only the registry knows. */
import { spawnSync } from 'node:child_process';
import { root } from './run.ts';

interface Entry {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
}
export interface Lock {
  readonly packages: Readonly<Record<string, Entry>>;
}
export interface LockFaults {
  readonly withoutSum: readonly string[];
  readonly fromElsewhere: readonly string[];
  /** Those whose install script nothing keeps from running. */
  readonly running: readonly string[];
  readonly allowed: readonly string[];
}

const REGISTRY = 'https://registry.npmjs.org/';
const nameOf = (path: string): string => path.replace(/^.*node_modules\//, '');

/** Without `resolved` npm asks its registry; anything else than a version there (git, http, a folder) is told by `resolved` or `link`. */
const isFromRegistry = ({ version = '', resolved, link = false }: Entry): boolean =>
  !link &&
  /^\d+\.\d+\.\d+/.test(version) &&
  (resolved === undefined || resolved.startsWith(REGISTRY));

/** npm 11 runs an install script that `allowScripts` does not name, and only tells of it; one named `false` it skips. */
export function lockFaults(
  { packages }: Lock,
  allowScripts: Readonly<Record<string, boolean>>,
): LockFaults {
  const all = Object.entries(packages).filter(([path]) => path !== '');
  const named = (faulty: (entry: Entry, name: string) => boolean): readonly string[] =>
    all.filter(([path, entry]) => faulty(entry, nameOf(path))).map(([path]) => nameOf(path));
  const scripts = named(({ hasInstallScript = false }) => hasInstallScript);
  return {
    withoutSum: named(({ integrity = '' }) => !/^sha512-[\w+/]{86}==$/.test(integrity)),
    fromElsewhere: named((entry) => !isFromRegistry(entry)),
    running: scripts.filter((name) => allowScripts[name] === undefined),
    allowed: Object.keys(allowScripts).filter((name) => allowScripts[name]),
  };
}

/** How many holes npm audit knows of, or why it could not be asked. */
export function audited(): { readonly holes: number } | { readonly why: string } {
  const shell = process.platform === 'win32';
  const { stdout } = spawnSync('npm', ['audit', '--json'], { cwd: root, encoding: 'utf8', shell });
  try {
    const { metadata, message = '' } = JSON.parse(stdout) as {
      metadata?: { vulnerabilities: { total: number } };
      message?: string;
    };
    if (metadata !== undefined) return { holes: metadata.vulnerabilities.total };
    return { why: /^\d{3} [A-Za-z ]+(?= -)/.exec(message)?.[0] ?? 'no answer' };
  } catch {
    return { why: 'no answer' };
  }
}
