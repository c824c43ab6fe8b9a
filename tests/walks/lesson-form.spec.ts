// Builds a small site of its own from tests/fixtures/content: only a build shows what a lesson with
// a misspelt tag or prop does.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { brokenOutline } from '../../src/build/headings.ts';
import { brokenLinks } from '../../src/build/links.ts';
import { forbiddenMarkup } from '../../src/build/markup.ts';
import { builtPages } from '../../src/build/pages.ts';

// One after the other: both write the types of their content beside the program.
test.describe.configure({ mode: 'serial', timeout: 180_000 });

let folder = '';
test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lesson-form-'));
});
test.afterAll(() => rmSync(folder, { recursive: true }));

/** Builds the fixture after a change to its lesson. */
function build(change: (lesson: string) => string) {
  const content = join(folder, 'content');
  const out = join(folder, 'dist');
  rmSync(content, { recursive: true, force: true });
  rmSync(`${content}-cache`, { recursive: true, force: true });
  cpSync('tests/fixtures/content', content, { recursive: true });
  // A meeting leads to simulations, and the pages of the fixture have none.
  rmSync(join(content, 'en', 'meetings'), { recursive: true });
  const file = join(content, 'en', 'lessons', 'hot-fluid-thin-fluid.mdx');
  const before = readFileSync(file, 'utf8');
  const after = change(before);
  writeFileSync(file, after);
  const result = spawnSync('astro', ['build', '--outDir', out], {
    encoding: 'utf8',
    env: { ...process.env, CONTENT_DIR: content, ASTRO_TELEMETRY_DISABLED: '1', NO_COLOR: '1' },
  });
  return { ok: result.status === 0, says: result.stdout + result.stderr, out };
}

test('a lesson with every tag builds, with good links, outline and markup', () => {
  const { ok, says, out } = build((lesson) => lesson);
  expect(ok, says).toBe(true);
  const pages = builtPages(out);
  const lesson = pages.find(({ address }) => address === '/lessons/hot-fluid-thin-fluid/');
  expect(brokenLinks(pages, out)).toEqual([]);
  expect(pages.flatMap(brokenOutline)).toEqual([]);
  expect(pages.flatMap(forbiddenMarkup)).toEqual([]);
  // Numbers in both systems: -30 °C is -22 °F.
  expect(lesson?.html).toContain('<span class="qty u-si">−30\u00a0°C</span>');
  expect(lesson?.html).toContain('<span class="qty u-us">−22\u00a0°F</span>');
  expect(lesson?.html).toMatch(/<math\b/);
  expect(lesson?.html).toContain('href="/sources/#astm-d341"');
  expect(lesson?.html).toContain('>ASTM D341, eq. 1<');
  // A lesson that is gone leads on: for a reader, for a browser without a script, for a search engine.
  const gone = pages.find(({ address }) => address === '/lessons/old-fluid/')?.html ?? '';
  expect(gone).toContain('<link rel="canonical" href="/lessons/hot-fluid-thin-fluid/">');
  expect(gone).toMatch(
    /<meta http-equiv="refresh" content="\d; url=\/lessons\/hot-fluid-thin-fluid\/">/,
  );
  expect(gone).toMatch(
    /<li id="the-oil">[^]*?href="\/lessons\/hot-fluid-thin-fluid\/#what-hot-does-to-fluid"/,
  );
});

// Every kind of break, without a build, is in tests/lessons/check; what else a tag says, in tests/lessons/parse-props.test.ts.
test('what the check of the content would refuse does not build either', () => {
  const { ok, says } = build((lesson) => {
    const changed = lesson.replace('<Caution>', '<Caution loud="yes">');
    expect(changed, 'the fixture has what the test changes').not.toBe(lesson);
    return changed;
  });
  expect(ok, says).toBe(false);
  expect(says.replaceAll(/\s+/g, ' ')).toMatch(/<Caution> on .*"loud" is not known here/);
});
