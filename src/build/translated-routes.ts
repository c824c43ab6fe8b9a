import { existsSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The pages that a translation shares with English, with the folder of its content that they show.
 * Without that folder there is no page. Its home page is its own: src/translated/pages/index.astro.
 */
const shared = [
  { pattern: '/glossary/', entrypoint: './src/pages/glossary.astro', shows: 'glossary' },
  { pattern: '/lessons/[id]/', entrypoint: './src/pages/lessons/[id].astro', shows: 'lessons' },
  { pattern: '/[page]/', entrypoint: './src/pages/[page].astro', shows: 'pages' },
] as const;

interface Setup {
  readonly injectRoute: (route: { pattern: string; entrypoint: string }) => void;
}

export const translatedRoutes = (language: string) => ({
  name: 'translated-routes',
  hooks: {
    'astro:config:setup': ({ injectRoute }: Setup): void => {
      for (const { pattern, entrypoint, shows } of shared) {
        if (existsSync(join('content', language, shows))) injectRoute({ pattern, entrypoint });
      }
    },
  },
});
