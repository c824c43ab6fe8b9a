import { expect, test } from 'vitest';
import { alternatesOf } from '../../src/language/pages.ts';

const site = new URL('https://site.example/shop/');
const [home, lesson] = ['/', '/lessons/hot-fluid-thin-fluid/'];

test.each([home, lesson])('%s and its twin name each other by whole addresses', (path) => {
  const links = [
    { hreflang: 'en', href: `https://site.example/shop${path}` },
    { hreflang: 'es', href: `https://site.example/shop/es${path}` },
    { hreflang: 'x-default', href: `https://site.example/shop${path}` },
  ];
  expect(alternatesOf(path, site)).toEqual(links);
  expect(alternatesOf(`/es${path}`, site)).toEqual(links);
});

test('a page in one language alone names nothing, and without an address no page does', () => {
  expect(alternatesOf('/lessons/what-slip-is/', site)).toEqual([]);
  expect(alternatesOf(home, undefined)).toEqual([]);
});
