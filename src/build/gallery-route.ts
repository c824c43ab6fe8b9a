import { cpSync, existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Where a build leaves the gallery: it is for contributors and for their snapshots, not for visitors. */
export const keptGallery = fileURLToPath(
  new URL('../../node_modules/.cache/gallery', import.meta.url),
);

interface Setup {
  readonly command: string;
  readonly injectRoute: (route: { pattern: string; entrypoint: string }) => void;
}

/** The page /gallery/, in development and where a build asks for it. */
export const galleryRoute = (asked: boolean) => ({
  name: 'gallery-route',
  hooks: {
    'astro:config:setup': ({ command, injectRoute }: Setup): void => {
      if (asked || command === 'dev') {
        injectRoute({ pattern: '/gallery/', entrypoint: './src/gallery/index.astro' });
      }
    },
  },
});

/** Takes the gallery out of a built site, before anything looks at its pages. */
export function keepGallery(site: string): void {
  const built = join(site, 'gallery');
  if (!existsSync(built)) return;
  rmSync(keptGallery, { recursive: true, force: true });
  // Copied and not renamed: a site may be built on another disk.
  cpSync(built, keptGallery, { recursive: true });
  rmSync(built, { recursive: true });
}
