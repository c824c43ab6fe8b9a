import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { inPackage, movedData, movedPage, movedScript, under } from '../../src/build/elsewhere.ts';
import { readBase } from '../../src/build/move-site.ts';

const sum = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`;

describe('a page two folders down', () => {
  const moved = (html: string) => movedPage(html, '/lessons/live-data/', inPackage);
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
  expect(movedPage('<a href="/course/">', '/', inPackage)).toBe('<a href="./course/index.html">');
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
  expect(movedScript(script, '..', inPackage)).toBe(there);
});

describe('in a folder of a host', () => {
  const shop = under('/shop/');
  test.each([
    ['<a href="/course/#live-data">', '<a href="/shop/course/#live-data">'],
    ['<a href="/">', '<a href="/shop/">'],
    ['<form action="/search/">', '<form action="/shop/search/">'],
    ['<a href="#here">', '<a href="#here">'],
    ['<a href="https://a.test/x/">', '<a href="https://a.test/x/">'],
    [
      '<astro-island component-url="/_astro/A.js" props="{&quot;base&quot;:[0,&quot;/es/&quot;]}">',
      '<astro-island component-url="/shop/_astro/A.js" props="{&quot;base&quot;:[0,&quot;/shop/es/&quot;]}">',
    ],
    [
      '<astro-island component-url="/_astro/A.js" props="{&quot;base&quot;:[0,&quot;/&quot;]}">',
      '<astro-island component-url="/shop/_astro/A.js" props="{&quot;base&quot;:[0,&quot;/shop/&quot;]}">',
    ],
  ])('%s', (html, there) => {
    // Wherever the page is: the one for a miss is shown at any depth.
    for (const page of ['/404.html', '/lessons/live-data/'])
      expect(movedPage(html, page, shop)).toBe(there);
  });
  test.each([
    ['`/lessons/${e}/`', '`/shop/lessons/${e}/`'],
    ['`/search/?${q}`', '`/shop/search/?${q}`'],
    ['`/practise/case/${s(k)}`', '`/shop/practise/case/${s(k)}`'],
    ['`/pagefind/${u}/pagefind.js`', '`/shop/pagefind/${u}/pagefind.js`'],
    ['{base:`/`},{base:`/es/`}', '{base:`/shop/`},{base:`/shop/es/`}'],
    ['`/ 2`', '`/ 2`'],
  ])('in a script %s', (script, there) => {
    expect(movedScript(script, '..', shop)).toBe(there);
  });
  test('in data', () => {
    expect(movedData('{"href":"/lessons/x/","unit":"/ 2"}', '/shop/')).toBe(
      '{"href":"/shop/lessons/x/","unit":"/ 2"}',
    );
  });
});

test.each([
  'shop',
  '/shop',
  'https://a.test/shop',
  'ftp://a.test/shop/',
  'https://a b/',
  '/a b/',
  '/../',
  '//',
])('the base %s is refused with a sentence', (asked) => {
  expect(readBase(asked)).toEqual({
    wrong: expect.stringContaining('for example /shop/') as string,
  });
});
test.each([
  ['/shop/', '/shop/'],
  ['/a/b-2/', '/a/b-2/'],
  ['', '/'],
  [undefined, '/'],
])('the base %s is taken', (asked, base) => {
  expect(readBase(asked)).toEqual({ base });
});
test.each([
  ['https://site.example/', '/'],
  ['http://127.0.0.1:8080/a/shop/', '/a/shop/'],
])('the address %s is taken whole, with its folder', (address, base) => {
  expect(readBase(address)).toEqual({ base, address });
});
