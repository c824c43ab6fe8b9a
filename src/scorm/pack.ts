// npm run scorm: makes the course package of the built site.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { stripTypeScriptTypes } from 'node:module';
import { dirname, join, posix } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { manifestOf } from './manifest.ts';
import { filesIn } from '../build/files-in.ts';
import { inPackage, movedPage, movedScript } from '../build/elsewhere.ts';

const TITLE = 'Slips When Hot';
const LAUNCH = 'index.html';
/** Where the script of the page begins that a platform opens, in src. */
const SCRIPT = 'scorm/launch/index.ts';
const page = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${TITLE}</title>
<style>html,body{margin:0;block-size:100%}iframe{display:block;inline-size:100%;block-size:100%;border:0}</style>
</head>
<body>
<iframe title="${TITLE}" data-src="site/course/index.html"></iframe>
<script type="module" src="launch/scorm/launch/index.js"></script>
</body>
</html>
`;

/** All files of the package by their names. */
export function packageOf(site: string): Readonly<Record<string, Uint8Array>> {
  const files: Record<string, Uint8Array> = { [LAUNCH]: strToU8(page) };
  for (const [script, text] of scriptsFrom(SCRIPT)) {
    files[`launch/${script.replace(/\.ts$/, '.js')}`] = strToU8(
      text.replace(/(from ')(\.[^']+)\.ts'/g, "$1$2.js'"),
    );
  }
  for (const name of filesIn(site)) {
    if (!ofStore.test(name)) files[`site/${name}`] = moved(name, readFileSync(join(site, name)));
  }
  files['imsmanifest.xml'] = strToU8(
    manifestOf({ title: TITLE, launch: LAUNCH, files: Object.keys(files).sort() }),
  );
  return files;
}

/** A script of ours and all that it imports, without their types. */
function scriptsFrom(first: string): ReadonlyMap<string, string> {
  const scripts = new Map<string, string>();
  const queue = [first];
  for (const script of queue) {
    if (scripts.has(script)) continue;
    const text = stripTypeScriptTypes(readFileSync(join('src', script), 'utf8'));
    scripts.set(script, text);
    for (const [, from = ''] of text.matchAll(/from '(\.[^']+)'/g)) {
      queue.push(posix.join(posix.dirname(script), from));
    }
  }
  return scripts;
}

/** A platform has the files; a page without the manifest stores nothing and offers nothing to install. */
const withoutStore = (html: string): string => html.replace(/<link rel="manifest"[^>]*>/u, '');
const ofStore = /^(service-worker\.js|offline-files\.[^/]+\.js|site\.webmanifest|icons\/.*)$/u;

function moved(name: string, bytes: Buffer): Uint8Array {
  if (name.endsWith('.html'))
    return strToU8(
      movedPage(withoutStore(bytes.toString()), `/${name.replace(/index\.html$/, '')}`, inPackage),
    );
  return /(^|\/)_astro\/[^/]+\.js$/u.test(name)
    ? strToU8(movedScript(bytes.toString(), name.startsWith('_astro/') ? '..' : '../..', inPackage))
    : bytes;
}

if (import.meta.main) {
  const [site = 'dist', target = join('dist.scorm', 'slips-when-hot-scorm-1.2.zip')] =
    process.argv.slice(2);
  const files = packageOf(site);
  const zip = zipSync(files, { level: 9 });
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, zip);
  console.log(`${target}: ${Object.keys(files).length} files, ${(zip.length / 1e6).toFixed(1)} MB`);
}
