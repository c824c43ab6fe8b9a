import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dist } from '../build/pages.ts';
import { writesMarkup } from './script-scan.ts';
import type { Figure } from './form.ts';
import { root } from './run.ts';

const command = 'npm run quality -- security';

const WAYS =
  'innerHTML, outerHTML, insertAdjacentHTML, srcdoc, document.write, eval, new Function and their like';

function scan(what: string, folder: string, files: readonly string[]): Figure {
  const found = files.flatMap((file) =>
    writesMarkup(readFileSync(join(folder, file), 'utf8')).map((way) => `${way} in ${file}`),
  );
  return {
    what: `${what}: places that turn text into a page or a program (${WAYS})`,
    value: found.length === 0 ? `0 in ${files.length} files` : found.join(', '),
    bar: '0',
    met: files.length > 0 && found.length === 0,
    command,
  };
}

/** What can be read off the files; what a browser has to show is in tests/quality/security.spec.ts. */
export function security(): Figure[] {
  if (!existsSync(join(dist, '_astro')))
    throw new Error('There is no built site. Run "npm run build" first.');
  const src = join(root, 'src');
  // This folder names the words that it looks for. Building and the book run here and are never sent.
  const ours = globSync('**/*.{ts,tsx,js,astro}', { cwd: src })
    .filter((file) => !/^(?:proof|build|book)\//.test(file))
    .toSorted();
  return [
    scan('Our own source', src, ours),
    scan('All scripts as they are sent', dist, globSync('**/*.js', { cwd: dist }).toSorted()),
  ];
}
