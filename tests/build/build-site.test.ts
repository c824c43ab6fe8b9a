import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const outer = mkdtempSync(join(tmpdir(), 'build-'));
afterAll(() => rmSync(outer, { recursive: true }));

test('a build that fails takes nothing away', () => {
  const content = join(outer, 'content');
  cpSync('tests/fixtures/content', content, { recursive: true });
  writeFileSync(join(content, 'en', 'sources', 'astm-d341.yaml'), 'weather: good\n');
  const site = join(outer, 'dist');
  mkdirSync(site);
  writeFileSync(join(site, 'index.html'), 'the last good one');
  const { status, stderr } = spawnSync(process.execPath, ['src/build/build-site.ts', site], {
    encoding: 'utf8',
    env: { ...process.env, CONTENT_DIR: content, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  expect(status).toBe(1);
  expect(stderr).toContain('Astro could not build the site');
  expect(readdirSync(site)).toEqual(['index.html']);
  expect(readFileSync(join(site, 'index.html'), 'utf8')).toBe('the last good one');
  expect(readdirSync(outer).filter((name) => name.startsWith('dist.'))).toEqual([]);
}, 60_000);
