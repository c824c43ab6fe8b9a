import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { relativePage, relativeScript } from '../../src/scorm/relative.ts';

const sum = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`;

describe('a page two folders down', () => {
  const moved = (html: string) => relativePage(html, '/lessons/live-data/');
  test.each([
    ['<a href="/course/#live-data">', '<a href="../../course/index.html#live-data">'],
    ['<a href="/">', '<a href="../../index.html">'],
    ['<form action="/search/">', '<form action="../../search/index.html">'],
    ['<link href="/icon.svg">', '<link href="../../icon.svg">'],
    ['<a href="#here">', '<a href="#here">'],
    ['<a href="https://a.test/x/">', '<a href="https://a.test/x/">'],
    [
      '<astro-island component-url="/_astro/A.js" props="{&quot;base&quot;:[0,&quot;/&quot;],&quot;address&quot;:[0,&quot;/questions/a.json&quot;]}">',
      '<astro-island component-url="../../_astro/A.js" props="{&quot;base&quot;:[0,&quot;../../&quot;],&quot;address&quot;:[0,&quot;../../questions/a.json&quot;]}">',
    ],
  ])('%s', (html, there) => {
    expect(moved(html)).toBe(there);
  });

  test('the policy follows a style that had to change, and leaves the others', () => {
    const [style, still] = ['a{src:url(/_astro/f.woff2)}', 'b{color:red}'];
    const html = moved(
      `<meta content="style-src '${sum(style)}' '${sum(still)}'"><style>${style}</style><style>${still}</style>`,
    );
    const now = 'a{src:url(../../_astro/f.woff2)}';
    expect(html).toContain(`<style>${now}</style>`);
    expect(html).toContain(`style-src '${sum(now)}' '${sum(still)}'`);
  });
});

test('a page at the root', () => {
  expect(relativePage('<a href="/course/">', '/')).toBe('<a href="./course/index.html">');
});

test.each([
  ['`/lessons/${e}/`', "`${new URL('../',import.meta.url).href}lessons/${e}/index.html`"],
  ['`/measure/jobs/#${e}`', "`${new URL('../',import.meta.url).href}measure/jobs/index.html#${e}`"],
  ['`/logs/${n}.csv`', "`${new URL('../',import.meta.url).href}logs/${n}.csv`"],
  [
    '`/practise/case/${s(k)}`',
    "`${new URL('../',import.meta.url).href}practise/case/index.html${s(k)}`",
  ],
  ['function(e){return`/`+e}', "function(e){return new URL('../'+e,import.meta.url).href}"],
  ['function(e){return`/es/`+e}', "function(e){return new URL('../'+e,import.meta.url).href}"],
  ['`/ 2`', '`/ 2`'],
])('in a script %s', (script, there) => {
  expect(relativeScript(script)).toBe(there);
});
