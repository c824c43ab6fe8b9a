/** A value that a sentence was not given stands on the page as what it is. */
import { expect, test } from 'vitest';
import { builtPages } from '../../src/build/pages.ts';

test.each(builtPages())('$address prints every value of its sentences', ({ html }) => {
  const text = html.replaceAll(/<(script|style)\b[^]*?<\/\1>|<[^>]*>/g, ' ');
  expect(text).not.toMatch(/\b(?:undefined|NaN)\b|\[object /);
});
