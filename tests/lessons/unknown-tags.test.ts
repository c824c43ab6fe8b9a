import { expect, test } from 'vitest';
import { unknownTags } from '../../src/lessons/unknown-tags.ts';

test('tags that are not offered are named, each once', () => {
  const body =
    '<Fluid />\n\n<Caution>\n\n<Num id="a" /> 3 < 4\n\n</Caution>\n\n<Engagement />\n<Engagement />';
  expect(unknownTags(body, { Fluid: 1, Caution: 1, Num: 1 })).toEqual(['Engagement']);
  expect(unknownTags('<toString />', {})).toEqual([]);
});
