import { spawn } from 'node:child_process';
import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const dist = join(root, 'dist');

/** The address, below the site's root, of a built page that holds a simulation; undefined where there is none. */
export function pageWith(sim: string): string | undefined {
  if (!existsSync(dist)) return undefined;
  // The id alone stands on the page as well that a simulation has moved away from.
  const section = new RegExp(`<section [^>]*\\bid="${sim}"`, 'u');
  const page = globSync('**/index.html', { cwd: dist }).find((path) =>
    section.test(readFileSync(join(dist, path), 'utf8')),
  );
  if (page === undefined) return undefined;
  const folder = dirname(page);
  return folder === '.' ? '/' : `/${folder}/`;
}

export interface Served {
  readonly origin: string;
  readonly stop: () => void;
}

/** The built site, or another build of it, on a free port of this machine, with the headers of a real host. */
export function serve(folder = dist): Promise<Served> {
  const child = spawn(process.execPath, [join(root, 'src/build/serve.ts'), folder], {
    env: { ...process.env, PORT: '0' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`The server ended with ${String(code)}.`)));
    child.stdout.on('data', (text: Buffer) => {
      const origin = /http:\/\/127\.0\.0\.1:\d+/u.exec(text.toString())?.[0];
      if (origin !== undefined) resolve({ origin, stop: () => child.kill() });
    });
  });
}
