import { expect, test } from 'vitest';
import { workerAddress } from '../../src/layouts/search-policy.ts';

const page = 'https://site.example/search/?q=seal';

test.each([
  '/pagefind/us/pagefind-worker.js',
  'https://site.example/pagefind/si/pagefind-worker.js',
])('the worker of the index may start: %s', (address) => {
  expect(workerAddress(address, page)).toBe(address);
});

test.each([
  'https://other.example/pagefind/us/pagefind-worker.js',
  '//other.example/pagefind/us/pagefind-worker.js',
  '/pagefind/us/pagefind-worker.js/../evil.js',
  '/_astro/Page.js',
  'data:text/javascript,alert(1)//pagefind/us/pagefind-worker.js',
  'blob:https://site.example/pagefind/us/pagefind-worker.js',
])('nothing else may: %s', (address) => {
  expect(() => workerAddress(address, page)).toThrow('may not start a script');
});
