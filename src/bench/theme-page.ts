// The page that ours are measured beside: an empty one of a well-kept theme for documentation, as its own build leaves it.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PACKAGES = ['astro@7', '@astrojs/starlight@0'];
const FILES: Readonly<Record<string, string>> = {
  'package.json': '{ "name": "theme-page", "private": true, "type": "module" }',
  'astro.config.mjs': `import { defineConfig } from 'astro/config';
import starlight from '@astrojs/starlight';
export default defineConfig({ integrations: [starlight({ title: 'Theme' })] });
`,
  'src/content.config.ts': `import { defineCollection } from 'astro:content';
import { docsLoader } from '@astrojs/starlight/loaders';
import { docsSchema } from '@astrojs/starlight/schema';
export const collections = { docs: defineCollection({ loader: docsLoader(), schema: docsSchema() }) };
`,
  'src/content/docs/index.md': '---\ntitle: Empty\n---\n\nOne line.\n',
};

/** Builds it in a folder of its own, with the network; the folder to serve. A minute. */
export function buildThemePage(): string {
  const folder = mkdtempSync(join(tmpdir(), 'theme-page-'));
  mkdirSync(join(folder, 'src/content/docs'), { recursive: true });
  for (const [path, text] of Object.entries(FILES)) writeFileSync(join(folder, path), text);
  const shell = process.platform === 'win32';
  const run = (command: string, words: readonly string[]): void => {
    execFileSync(command, words, { cwd: folder, shell, stdio: ['ignore', 'ignore', 'inherit'] });
  };
  run('npm', ['install', '--no-audit', '--no-fund', ...PACKAGES]);
  run('npx', ['astro', 'build']);
  return join(folder, 'dist');
}
