import { describe, expect, test } from 'vitest';
import { manifestOf } from '../../src/scorm/manifest.ts';
import { faults } from './manifest-faults.ts';

describe('the manifest', () => {
  const good = manifestOf({
    title: 'A & B',
    launch: 'index.html',
    files: ['index.html', 'a b.js'],
  });
  test('keeps to the schemas', async () => {
    expect(await faults(good)).toEqual([]);
  });
  test.each([
    ['an item without a name', good.replace('identifier="whole-course" ', '')],
    ['a type that there is not', good.replace('"sco"', '"scorm"')],
    ['no resources', good.replace(/<resources>[^]*<\/resources>/, '')],
    ['an element of nobody', good.replace('<resources>', '<extra/><resources>')],
  ])('and %s does not', async (_, bad) => {
    expect(bad).not.toBe(good);
    expect(await faults(bad)).not.toEqual([]);
  });
});
