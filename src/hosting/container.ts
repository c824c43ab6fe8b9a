// npm run container: a folder to build a container from, with the built site and a standard web server.
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readBase } from '../build/move-site.ts';
import { dist, noSiteIn } from '../build/pages.ts';
import { nginxConfig } from './nginx.ts';

const ROOT = '/usr/share/nginx/html';

/** The site lies where its base says, so that addresses and files are the same. */
export function containerFile(base: string): string {
  return `FROM docker.io/library/nginx:1-alpine
COPY nginx.conf /etc/nginx/conf.d/default.conf
COPY site ${ROOT}${base}
EXPOSE 80
`;
}

function fail(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}

if (import.meta.main) {
  const place = readBase(process.env['SITE_BASE']);
  const [target = 'dist.container', site = dist] = process.argv.slice(2);
  if ('wrong' in place) fail(place.wrong);
  const missing = noSiteIn(site);
  if (missing !== undefined) fail(missing);
  rmSync(target, { recursive: true, force: true });
  mkdirSync(target, { recursive: true });
  cpSync(site, join(target, 'site'), { recursive: true });
  const headers = readFileSync(join(site, '_headers'), 'utf8');
  writeFileSync(
    join(target, 'nginx.conf'),
    nginxConfig(headers, { root: ROOT, port: 80, base: place.base }),
  );
  writeFileSync(join(target, 'Containerfile'), containerFile(place.base));
  console.log(`${target}: build it with "docker build -f ${target}/Containerfile ${target}"`);
}
