// Makes the service worker of a built site: the list of its files by workbox-build, and the script in src/offline/worker.ts.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'rolldown';
import { getManifest } from 'workbox-build';
import { packed } from './budgets.ts';

const script = fileURLToPath(new URL('../offline/worker.ts', import.meta.url));

/** Compressed kilobytes (1000 bytes) of the service worker, outside the budgets of pages: it comes after them. */
const WORKER_KB = 10;

/** For the host, for crawlers, two packages for other systems that nothing on a device could use, and the worker itself. */
const left = [
  '_headers',
  'robots.txt',
  'questions/*.zip',
  // A stored worker could never find a newer one.
  'service-worker.js',
  'offline-files.*.js',
];

/** Names that change with what is in the file: the bundler's scripts and fonts, and the pieces of the search index. */
const namedByContent =
  /(^|\/)(_astro\/[^/]+\.[\w-]{8}\.[a-z0-9]+|pagefind\/\w+\/(fragment|index|filter)\/[^/]+|pagefind\/\w+\/pagefind\.[^/]+\.pf_meta)$/;

/** What a host leaves as it is, because it is compressed already. */
const isPacked = (file: string): boolean =>
  /^\.(woff2|png|pagefind|pf_\w+)$/.test(extname(file)) || file.includes('.pf_');

const sum = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('base64');

export interface OfflineList {
  readonly files: readonly (string | readonly [url: string, sum: string])[];
  readonly bytes: number;
  readonly sent: number;
}

/** Every file that a visitor can come to, with the sum of those whose name does not change with what is in them. */
export async function offlineList(site: string): Promise<OfflineList> {
  const { manifestEntries, warnings } = await getManifest({
    globDirectory: site,
    globPatterns: ['**/*'],
    globIgnores: left,
    maximumFileSizeToCacheInBytes: 2e6,
  });
  if (warnings.length > 0) throw new Error(warnings.join(' '));
  let bytes = 0;
  let sent = 0;
  const files = manifestEntries.map(({ url }) => {
    const content = readFileSync(join(site, url));
    bytes += content.length;
    sent += isPacked(url) ? content.length : packed(content);
    return namedByContent.test(url) ? url : ([url, sum(content)] as const);
  });
  return { files, bytes, sent };
}

/** Writes service-worker.js and its list into a built site. @returns a sentence where the script is too large */
export async function storeOffline(site: string): Promise<string[]> {
  const list = await offlineList(site);
  const text = `self.offlineFiles=${JSON.stringify(list)};\n`;
  // By its sum, so that the worker changes with it: browsers look for a new version in the worker first.
  const name = `offline-files.${sum(Buffer.from(text)).replace(/\W/g, '').slice(0, 8)}.js`;
  const { output } = await build({
    input: script,
    write: false,
    platform: 'browser',
    output: { format: 'iife', minify: true },
    transform: {
      define: {
        OFFLINE_FILES: JSON.stringify(name),
        'process.env.NODE_ENV': '"production"',
      },
    },
  });
  const [worker] = output;
  writeFileSync(join(site, name), text);
  writeFileSync(join(site, 'service-worker.js'), worker.code);
  const kB = (code: string): number => packed(code) / 1000;
  const MB = (count: number): string => (count / 1e6).toFixed(2);
  console.log(
    `   offline: ${list.files.length} files, ${MB(list.bytes)} MB (${MB(list.sent)} MB as sent); ` +
      `service worker ${kB(worker.code).toFixed(1)} kB, its list ${kB(text).toFixed(1)} kB`,
  );
  return kB(worker.code) > WORKER_KB
    ? [`The service worker is ${kB(worker.code).toFixed(1)} kB; it may be ${WORKER_KB} kB.`]
    : [];
}
