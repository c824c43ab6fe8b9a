import { mkdtempSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { randomBytes } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wrongImports } from '../../src/build/astro-imports.ts';
import { overBudget, pageCost } from '../../src/build/budgets.ts';
import { parseHeaders } from '../../src/build/headers.ts';
import { brokenOutline } from '../../src/build/headings.ts';
import { brokenLinks } from '../../src/build/links.ts';
import { forbiddenMarkup } from '../../src/build/markup.ts';
import { withPolicyFirst } from '../../src/build/policy-first.ts';
import { builtPages } from '../../src/build/pages.ts';

const page = (html: string, address = '/') => ({ address, html });

describe('byte budgets', () => {
  let folder = '';
  // Random bytes do not compress, so a file's size here is its cost.
  const put = (name: string, kB: number, text = '') =>
    writeFileSync(join(folder, name), Buffer.concat([Buffer.from(text), randomBytes(kB * 1000)]));
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'budget-'));
    mkdirSync(join(folder, 'sub'));
    put('small.js', 20);
    put('outer.js', 20, 'import"./sub/inner.js";');
    put('sub/inner.js', 20);
    put('big.css', 115, 'a{src:url(/face.woff2)}');
    put('face.woff2', 30);
    put('second.woff2', 1);
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  // Not the home page, which has a budget of its own.
  const says = (html: string, address = '/lesson/') =>
    overBudget(pageCost({ address, html }, folder));

  test('a small page passes', () => {
    expect(says('<script src="/small.js"></script><link href="/face.woff2">')).toEqual([]);
  });
  test('scripts that a script imports are counted', () => {
    expect(says('<script src="/outer.js"></script>')).toEqual([
      expect.stringMatching(
        /^\/lesson\/ loads 40\.\d kB of JavaScript; a page without a sim.* 33 kB\.$/,
      ),
    ]);
  });
  test('a simulation may cost more, up to its own budget', () => {
    expect(says('<astro-island component-url="/outer.js"></astro-island>')).toEqual([]);
    const both = '<astro-island component-url="/outer.js" renderer-url="/small.js"></astro-island>';
    expect(says(both)).toEqual([expect.stringContaining('may load 45.7 kB')]);
  });
  test('a page of practice may cost 60 kB', () => {
    const both = '<astro-island component-url="/outer.js" renderer-url="/small.js"></astro-island>';
    expect(says(both, '/practise/round/')).toEqual([
      expect.stringMatching(/a page of practice may load 60 kB\.$/),
    ]);
    expect(says('<astro-island component-url="/outer.js">', '/practise/round/')).toEqual([]);
  });
  test('what a reader has to ask for is not counted', () => {
    put('lazy.js', 20, 'button.onclick=()=>import("./sub/inner.js");');
    expect(says('<script src="/lazy.js"></script>')).toEqual([]);
  });
  test('a font that a style sheet names counts toward the page', () => {
    const html = '<link href="/big.css"><link href="/small.js">';
    expect(says(html)).toEqual([expect.stringMatching(/costs 16\d\.\d kB.* 150 kB\.$/)]);
  });
  test('two fonts are one too many', () => {
    expect(says('<link href="/face.woff2"><link href="/second.woff2">')).toEqual([
      expect.stringContaining('loads 2 fonts'),
    ]);
  });
  test('a file that was not built is an error', () => {
    expect(() => says('<script src="/gone.js"></script>')).toThrow('loads /gone.js');
  });
  test('pages are found wherever they are', () => {
    writeFileSync(join(folder, 'index.html'), 'x');
    writeFileSync(join(folder, 'sub', 'index.html'), 'x');
    writeFileSync(join(folder, '404.html'), 'x');
    expect(builtPages(folder).map(({ address }) => address)).toEqual(['/', '/404.html', '/sub/']);
  });
});

describe('links', () => {
  const site = [
    page('<h1 id="top">x</h1><a href="/b/">b</a><a href="/b/#there">b</a>'),
    page('<h2 id="there">x</h2><a href="../">up</a><a href="#there">here</a>', '/b/'),
  ];
  test('good ones pass', () => expect(brokenLinks(site, '/nowhere')).toEqual([]));
  test('links out are not ours to check', () => {
    expect(brokenLinks([page('<a href="https://example.org/x">x</a>')], '/nowhere')).toEqual([]);
  });
  test.each(['/gone/', '/b/#gone', '#gone', '/b', '../c/', '/gone.pdf'])('%s is told', (href) => {
    const wrong = brokenLinks([...site, page(`<a class="x" href="${href}">x</a>`, '/c/d/')], '/');
    expect(wrong).toEqual([expect.stringContaining(href)]);
  });
  test('an id given twice is told', () => {
    expect(brokenLinks([page('<p id="x"><p id="x">')], '/')).toEqual(['/ has the id "x" twice.']);
  });
});

describe('outline', () => {
  const outline = (html: string) => brokenOutline(page(`<main>${html}</main>`));
  test('one h1 and no level skipped', () => {
    expect(outline('<h1>a</h1><h2>b</h2><h3>c</h3><h2>d</h2>')).toEqual([]);
  });
  test.each(['<h2>a</h2>', '<h1>a</h1><h1>b</h1>', '<h1>a</h1><h3>b</h3>', '<h1>a</h1><h2></h2>'])(
    '%s is told',
    (html) => expect(outline(html)).not.toEqual([]),
  );
});

describe('markup', () => {
  const policy =
    '<meta http-equiv="content-security-policy" content="default-src \'none\';' +
    "require-trusted-types-for 'script';trusted-types offline; script-src 'self'\">";
  const says = (html: string) => forbiddenMarkup(page(policy + html));
  test('plain markup passes', () => {
    expect(says('<a href="https://example.org/">x</a><script src="/a.js"></script>')).toEqual([]);
  });
  test.each([
    '<p style="color:red">',
    '<b onclick="x()">',
    '<script src="https://example.org/x.js">',
    '<img src="//example.org/x.png">',
  ])('%s is told', (html) => expect(says(html)).toHaveLength(1));
  test('a formula that cannot be read is told', () => {
    const html = '<span class="katex-error" title="ParseError: KaTeX: Expected }">x</span>';
    expect(says(html)).toEqual([expect.stringContaining('Expected }')]);
  });
  test('a page without a policy, or with a weak one, is told', () => {
    expect(forbiddenMarkup(page('<p>'))).toHaveLength(1);
    const weak = policy.replace("'self'", "'unsafe-inline'");
    expect(forbiddenMarkup(page(weak))).toHaveLength(1);
    const running = policy.replace("'self'", "'unsafe-eval'");
    expect(forbiddenMarkup(page(running))).toHaveLength(1);
  });
  test('only the search page may compile WebAssembly', () => {
    const wasm = policy.replace("'self'", "'wasm-unsafe-eval'");
    const search = wasm.replace('trusted-types offline', 'trusted-types offline default');
    expect(forbiddenMarkup(page(search, '/search/'))).toEqual([]);
    expect(forbiddenMarkup(page(wasm, '/course/'))).toHaveLength(1);
  });
  test('the policy is moved above the scripts, under the character set', () => {
    const head = '<head><meta charset="utf-8"><script>$&</script>';
    const moved = withPolicyFirst(`${head}${policy}<title>x</title>`);
    expect(moved).toBe(`<head><meta charset="utf-8">${policy}<script>$&</script><title>x</title>`);
    expect(forbiddenMarkup(page(moved))).toEqual([]);
    expect(withPolicyFirst(moved)).toBe(moved);
    expect(withPolicyFirst(head)).toBe(head);
  });
  test('a script above the policy is told', () => {
    expect(forbiddenMarkup(page(`<script>x</script>${policy}`))).toEqual([
      expect.stringContaining('above the content security policy'),
    ]);
  });
  test('text that could become script is told, and a policy that may make it one', () => {
    const open = policy.replace("require-trusted-types-for 'script';", '');
    expect(forbiddenMarkup(page(open))).toHaveLength(1);
    for (const makers of ['', ' default', ' offline default', ' *']) {
      const own = policy.replace('trusted-types offline', `trusted-types${makers}`);
      expect(forbiddenMarkup(page(own))).toHaveLength(1);
    }
    expect(forbiddenMarkup(page(policy.replace(';trusted-types offline', '')))).toHaveLength(1);
  });
});

describe('imports of .astro files', () => {
  const rules = [{ comment: 'Because.', from: 'src/ui', mayReach: ['src/storage'] }];
  test.each([
    "import A from './a.ts';",
    "import A from '../storage/a.ts';",
    "import z from 'zod';",
  ])('%s is fine in src/ui', (text) =>
    expect(wrongImports('src/ui/X.astro', text, rules)).toEqual([]),
  );
  test.each([
    "import { a } from '../engine/a.ts';",
    "import type { A } from '../engine/a.ts';",
    "import '../pages/x.css';",
    "export { a } from '../storage-room/a.ts';",
  ])('%s is not', (text) => {
    expect(wrongImports('src/ui/X.astro', text, rules)).toEqual([
      expect.stringContaining('Because.'),
    ]);
  });
});

// A browser ignores frame-ancestors in a page (Content Security Policy Level 3, "frame-ancestors"), so
// it can stand in the headers alone.
test('the headers keep the site out of the frames of others', () => {
  const headers = new Map(parseHeaders(readFileSync('public/_headers', 'utf8')));
  expect(headers.get('Content-Security-Policy')).toBe("frame-ancestors 'none'");
  // For browsers that read no policy.
  expect(headers.get('X-Frame-Options')).toBe('DENY');
});

test('headers are read as static hosts read them', () => {
  expect(parseHeaders("/*\n  A: b\n  Content-Security-Policy: frame-ancestors 'none'\n")).toEqual([
    ['A', 'b'],
    ['Content-Security-Policy', "frame-ancestors 'none'"],
  ]);
  expect(() => parseHeaders('/*\n  oops\n')).toThrow('has no colon');
});

test('a widget may reach itself and no other widget', () => {
  const widgets = [{ comment: 'Because.', from: 'src/widgets', mayReach: [] }];
  const reach = (text: string) => wrongImports('src/widgets/a/index.astro', text, widgets);
  expect(reach("import { View } from './View.tsx';")).toEqual([]);
  expect(reach("import { View } from '../b/View.tsx';")).toHaveLength(1);
});
