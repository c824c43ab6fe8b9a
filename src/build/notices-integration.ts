import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import {
  allNotices,
  fontPackage,
  noticeOf,
  packageOf,
  printNotices,
  type Bundled,
} from './notices.ts';

const modules = fileURLToPath(new URL('../../node_modules', import.meta.url));

/** In Astro's folder for assets, because Astro keeps nothing else that the bundler writes. */
const list = '_astro/bundled-licences.json';

/** What a worker is bundled from, by package. Vite bundles workers apart from the pages, and lists no licences of theirs. */
const inWorkers = new Set<string>();
const collectWorkers = () => ({
  name: 'packages-of-workers',
  generateBundle(_: unknown, bundle: Readonly<Record<string, { readonly moduleIds?: string[] }>>) {
    for (const id of Object.values(bundle).flatMap(({ moduleIds = [] }) => moduleIds)) {
      const name = packageOf(id);
      if (name !== undefined) inWorkers.add(name);
    }
  },
});

/**
 * Writes third-party-notices.txt into every built site, and the licence of a font beside the font. A
 * part of Astro's build, since only the bundler knows what it took in.
 */
export const thirdPartyNotices = (): AstroIntegration => ({
  name: 'third-party-notices',
  hooks: {
    'astro:config:setup': ({ updateConfig }) => {
      updateConfig({
        vite: {
          build: { license: { fileName: list } },
          worker: { plugins: () => [collectWorkers()] },
        },
      });
    },
    'astro:build:done': ({ dir }) => {
      const site = fileURLToPath(dir);
      const bundled = JSON.parse(readFileSync(join(site, list), 'utf8')) as Bundled[];
      rmSync(join(site, list));
      const fonts = new Map(
        readdirSync(join(site, '_astro'))
          .filter((name) => /\.woff2?$/.test(name))
          .map((name) => [name, fontPackage(join(site, '_astro', name), modules)]),
      );
      const named = new Set(bundled.map(({ name }) => name));
      const others = [...inWorkers].filter((name) => !named.has(name));
      const notices = allNotices(bundled, [...new Set([...fonts.values(), ...others])], modules);
      writeFileSync(join(site, 'third-party-notices.txt'), printNotices(notices));
      for (const [font, name] of fonts) {
        const beside = font.replace(/\.woff2?$/, '.licence.txt');
        writeFileSync(join(site, '_astro', beside), noticeOf(name, modules).text);
      }
    },
  },
});
