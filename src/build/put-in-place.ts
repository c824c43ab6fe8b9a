import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, rmdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { filesIn } from './files-in.ts';

function removeEmpty(folder: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.isDirectory()) removeEmpty(join(folder, entry.name));
  }
  if (readdirSync(folder).length === 0) rmdirSync(folder);
}

/** The service worker after the pages that it stores, the pages after what they load. */
const rank = (file: string): number => {
  if (file === 'service-worker.js') return 2;
  return Number(file.endsWith('.html'));
};

/**
 * Makes a freshly built folder the site, under a server that may be sending the old one: each file is
 * renamed over the one it replaces, in the order of `rank`, and what the new site has not goes
 * last. So every address of both sites is there at every moment. Renaming the whole folder leaves a
 * moment with none, and a link in its place does not work everywhere.
 */
export function putInPlace(built: string, site: string): void {
  const files = filesIn(built).sort((a, b) => rank(a) - rank(b));
  const before = existsSync(site) ? filesIn(site) : [];
  for (const file of files) {
    mkdirSync(dirname(join(site, file)), { recursive: true });
    renameSync(join(built, file), join(site, file));
  }
  const kept = new Set(files);
  for (const file of before) if (!kept.has(file)) rmSync(join(site, file));
  removeEmpty(site);
  rmSync(built, { recursive: true });
}
