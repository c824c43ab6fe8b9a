import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dist } from '../../src/build/pages.ts';
import { packageOf } from '../../src/scorm/pack.ts';
import { faults } from '../scorm/manifest-faults.ts';

describe('the course package of the built site', () => {
  const files = packageOf(dist);
  const text = (name: string) => new TextDecoder().decode(files[name]);

  test('has a manifest that keeps to the schemas and names every file of it', async () => {
    const manifest = text('imsmanifest.xml');
    expect(await faults(manifest)).toEqual([]);
    const named = Array.from(manifest.matchAll(/<file href="([^"]+)"/g), ([, one = '']) =>
      decodeURI(one),
    );
    expect([...named, 'imsmanifest.xml'].sort()).toEqual(Object.keys(files).sort());
  });

  test('leads from each page to files that are there, and to none by the root of a host', () => {
    const missing: string[] = [];
    for (const name of Object.keys(files).filter((one) => one.endsWith('.html'))) {
      const html = text(name).replaceAll(/<(style|script)\b[^>]*>[^]*?<\/\1>/g, '');
      for (const [, at = ''] of html.matchAll(
        /\s(?:href|src|action|component-url|renderer-url)="([^"#][^"]*)"/g,
      )) {
        if (/^[a-z]+:/.test(at)) continue;
        const path = decodeURI(at.replace(/[?#].*$/, ''));
        const file = posix.join(posix.dirname(name), path);
        if (at.startsWith('/') || files[file] === undefined) missing.push(`${name}: ${at}`);
      }
    }
    expect(missing).toEqual([]);
  });

  test('has no script that asks at the root of a host', () => {
    const scripts = Object.keys(files).filter((name) => /_astro\/[^/]+\.js$/.test(name));
    expect(scripts.length).toBeGreaterThan(100);
    const roots = scripts.flatMap((name) =>
      Array.from(text(name).matchAll(/[`"']\/(?:[a-z_][^`"'\n]{0,40}|[`"']\+)/g), ([at]) => at),
    );
    // The home page of another language, which is a link.
    expect(roots.filter((at) => at !== '`/es/')).toEqual([]);
  });
});
