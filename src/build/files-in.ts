import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** Every file of a folder and its folders, by its path from there, with slashes on every system. */
export const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'));
