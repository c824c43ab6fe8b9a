// npm run stick: the built site with what a laptop needs to show it, as one file for a stick.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { strToU8, zipSync, type Zippable } from 'fflate';
import { lookup } from 'mrmime';
import { dist, noSiteIn } from '../build/pages.ts';
import { filesIn } from '../build/files-in.ts';

const FOLDER = 'slips-when-hot';
const handed = fileURLToPath(new URL('files', import.meta.url));
/** As Unix writes down that a file may be started. */
const UNIX = 3;
const MAY_START = 0o100755 << 16;
const MAY_READ = 0o100644 << 16;

/** What a server says of each kind of file, in one list for all of the little servers. */
function typesOf(names: readonly string[]): Record<string, string> {
  const endings = [...new Set(names.map((name) => extname(name).slice(1)))].sort();
  return Object.fromEntries(
    endings.flatMap((ending) => {
      const type = lookup(ending);
      if (type === undefined) return [];
      return [[ending, type.startsWith('text/') ? `${type}; charset=utf-8` : type]];
    }),
  );
}

/** All files of the stick by their names. */
export function stickOf(site: string): Zippable {
  const files: Record<string, Uint8Array> = {};
  for (const name of filesIn(handed)) {
    const text = readFileSync(join(handed, name), 'utf8');
    // Windows reads its own start files with its own ends of lines.
    files[name] = strToU8(/\.(cmd|ps1)$/.test(name) ? text.replaceAll('\n', '\r\n') : text);
  }
  const start = files['start-linux.sh'];
  if (start !== undefined) files['start-mac.command'] = start;
  const names = filesIn(site).filter((name) => name !== '_headers');
  for (const name of names) files[`site/${name}`] = readFileSync(join(site, name));
  files['server/types.json'] = strToU8(JSON.stringify(typesOf(names), null, 2));
  return Object.fromEntries(
    Object.entries(files).map(([name, bytes]) => [
      `${FOLDER}/${name}`,
      [bytes, { os: UNIX, attrs: /\.(sh|command)$/.test(name) ? MAY_START : MAY_READ }],
    ]),
  );
}

if (import.meta.main) {
  const [site = dist, target = join('dist.stick', 'stick.zip')] = process.argv.slice(2);
  const missing = noSiteIn(site);
  if (missing !== undefined) {
    console.error(missing);
    process.exit(1);
  }
  const zip = zipSync(stickOf(site), { level: 9 });
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, zip);
  console.log(`${target}: ${(zip.length / 1e6).toFixed(1)} MB`);
}
