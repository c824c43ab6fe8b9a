// What of other people's work is sent to visitors, and under which licence: collected at build, so
// that a package which begins to ship is named without anybody thinking of it.
import { globSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

export interface Notice {
  readonly name: string;
  readonly version: string;
  /** An SPDX identifier. */
  readonly licence: string;
  readonly text: string;
}

/** As Vite lists the packages that its bundler took code from (`build.license`). */
export interface Bundled {
  readonly name: string;
  readonly version: string;
  readonly identifier?: string;
  readonly text?: string;
}

/** Sent to visitors, yet not by way of the bundler: the search, the service worker, and what Astro and Vite write in. */
const written = [
  'astro',
  'pagefind',
  'vite',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
];

function licenceFile(folder: string): string | undefined {
  const [found] = globSync(['LICEN[CS]E*', 'LICEN[CS]E/LICEN[CS]E'], { cwd: folder })
    .map((name) => join(folder, name))
    .filter((file) => statSync(file).isFile());
  return found;
}

/** The notice of an installed package. */
export function noticeOf(name: string, modules: string): Notice {
  const folder = join(modules, name);
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    version: string;
    license?: string;
  };
  const file = licenceFile(folder);
  const text = file === undefined ? '' : readFileSync(file, 'utf8');
  return { name, version: about.version, licence: about.license ?? '', text };
}

/** The package that a module of the bundler lies in; undefined for one of ours. */
export function packageOf(id: string): string | undefined {
  const [, inside] = /^.*\/node_modules\/(.+)$/u.exec(id.replaceAll('\\', '/')) ?? [];
  const [scope = '', name = ''] = inside?.split('/') ?? [];
  if (inside === undefined) return undefined;
  return scope.startsWith('@') ? `${scope}/${name}` : scope;
}

/** The package that a font of the built site came from: its file there has the same bytes. */
export function fontPackage(font: string, modules: string): string {
  const bytes = readFileSync(font);
  const [stem = ''] = basename(font).split('.');
  const source = globSync(`{@fontsource,@fontsource-variable}/*/files/${stem}.*`, {
    cwd: modules,
  }).find((file) => readFileSync(join(modules, file)).equals(bytes));
  if (source === undefined) {
    throw new Error(
      `No installed package has the font ${basename(font)}, so its licence is unknown.`,
    );
  }
  return dirname(dirname(source)).replaceAll('\\', '/');
}

/** Vite's file goes on with the licences of its own dependencies, none of which is sent. */
const ownPart = (text: string): string => text.split('# Licenses of bundled dependencies')[0] ?? '';

/** Everything that ships, by name. A package without a licence text stops the build. */
export function allNotices(
  bundled: readonly Bundled[],
  fonts: readonly string[],
  modules: string,
): Notice[] {
  const notices = [
    ...bundled.map(({ name, version, identifier = '', text = '' }) => ({
      name,
      version,
      licence: identifier,
      text,
    })),
    ...[...written, ...fonts].map((name) => noticeOf(name, modules)),
  ].map((notice) => ({ ...notice, text: ownPart(notice.text).trim() }));
  const bare = notices.filter(({ licence, text }) => licence === '' || text === '');
  if (bare.length > 0) {
    const names = bare.map(({ name }) => name).join(', ');
    throw new Error(`Sent to visitors, but without a licence that could be named: ${names}.`);
  }
  return notices.sort((a, b) => (a.name < b.name ? -1 : 1));
}

const line = '='.repeat(72);

export const printNotices = (notices: readonly Notice[]): string =>
  [
    'Parts of this site are the work of others. These are their licences.',
    '',
    ...notices.map(({ name, version, licence }) => `${name} ${version}: ${licence}`),
    ...notices.flatMap(({ name, version, text }) => [
      '',
      line,
      `${name} ${version}`,
      line,
      '',
      text,
    ]),
    '',
  ].join('\n');
