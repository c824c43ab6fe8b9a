import { existsSync, globSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** Neither what a tool made nor what somebody else wrote. */
const notOurs = ['node_modules', 'dist', '.git', '.astro', '.cache', 'test-results', 'coverage'];
const isOurs = (name: string): boolean =>
  !notOurs.some((folder) => name === folder || name.startsWith(`${folder}.`));

export const markdownFiles = (root: string): string[] =>
  globSync('**/*.md', { cwd: root, exclude: (name) => !isOurs(basename(name)) });

/** As GitHub makes the id of a heading. */
const slug = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');

const withoutBlocks = (text: string): string => text.replace(/^```[^]*?^```/gm, '');

const headings = (text: string): string[] =>
  Array.from(withoutBlocks(text).matchAll(/^#+ +(.*)$/gm), ([, heading = '']) => slug(heading));

/** A path as the text names it: from the root or from beside the text; `<id>` stands for any name. */
const pathPattern =
  /^(?:src|tests|content|public)(?:\/[\w.<>[\]-]+)*\/?$|^[\w-]+\.(?:ts|tsx|mjs|css|py)$/;

function namesNothing(path: string, folder: string, root: string): boolean {
  // Brackets are a part of the names of pages, "[id].astro", and no set of letters.
  const pattern = path
    .replaceAll('[', '[[]')
    .replaceAll(/<[^>]*>/g, '*')
    .replace(/\/$/, '');
  if (!path.includes('/')) {
    return (
      globSync(`{src,tests}/**/${path}`, { cwd: root }).length + +existsSync(join(root, path)) === 0
    );
  }
  return ![folder, '.'].some((from) => globSync(join(from, pattern), { cwd: root }).length > 0);
}

/**
 * One sentence for each link of a Markdown file that leads nowhere, and each path in backticks that
 * names nothing. Links to other sites are not asked for: a test must not need them.
 */
export function brokenReferences(file: string, root: string): string[] {
  const text = withoutBlocks(readFileSync(join(root, file), 'utf8'));
  const wrong: string[] = [];
  for (const [, target = ''] of text.matchAll(/\]\(([^)\s]+)\)/g)) {
    if (/^[a-z]+:/.test(target)) continue;
    const [path = '', anchor] = target.split('#');
    const there = path === '' ? file : join(dirname(file), path);
    if (!existsSync(join(root, there)))
      wrong.push(`${file} links to ${target}, which is not there.`);
    else if (anchor !== undefined && there.endsWith('.md')) {
      if (!headings(readFileSync(join(root, there), 'utf8')).includes(anchor)) {
        wrong.push(`${file} links to ${target}, and that text has no such heading.`);
      }
    }
  }
  for (const line of text.split('\n')) {
    // A table may name what is planned, if it says so.
    if (line.includes('not written yet')) continue;
    for (const [, path = ''] of line.matchAll(/`([^`]+)`/g)) {
      if (pathPattern.test(path) && namesNothing(path, dirname(file), root)) {
        wrong.push(`${file} names ${path}, and no such file or folder is there.`);
      }
    }
  }
  return wrong;
}
