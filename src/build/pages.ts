import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { filesIn } from './files-in.ts';

export const dist = fileURLToPath(new URL('../../dist', import.meta.url));

/** What is said where a folder holds no built site; undefined where it does. */
export const noSiteIn = (folder: string): string | undefined =>
  existsSync(join(folder, 'index.html'))
    ? undefined
    : `There is no built site in ${folder}. Run "npm run build" first.`;

export interface BuiltPage {
  /** As a visitor asks for it: "/course/", "/404.html". */
  readonly address: string;
  readonly html: string;
}

/** Ids of the simulations that a page holds. */
export const simulationsIn = (html: string): readonly string[] =>
  Array.from(html.matchAll(/<section class="sim[^"]*" id="([\w-]+)"/g), ([, id = '']) => id);

/** Every page of a built site, found by looking, so that a new one cannot escape the checks. */
export function builtPages(folder: string = dist): BuiltPage[] {
  return filesIn(folder)
    .filter((name) => name.endsWith('.html'))
    .map((name) => ({
      address: `/${name.replace(/index\.html$/, '')}`,
      html: readFileSync(join(folder, name), 'utf8'),
    }))
    .sort((a, b) => (a.address < b.address ? -1 : 1));
}
