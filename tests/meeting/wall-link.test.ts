import { expect, test } from 'vitest';
import { readWallLink } from '../../src/meeting/wall-link.ts';

const STATE = '1~temp.90~height.0.07';

test.each([
  ['lessons/thin-gap-open-hole/', 'lessons/thin-gap-open-hole/'],
  ['lessons/thin-gap-open-hole/index.html', 'lessons/thin-gap-open-hole/'],
  ['whole-car/', 'whole-car/'],
  ['es/lessons/hot-fluid-thin-fluid/', 'es/lessons/hot-fluid-thin-fluid/'],
])('%s: the page, the simulation and its state', (page, path) => {
  const read = { page, id: 'gap-or-hole', state: STATE };
  expect(readWallLink(`?page=${page}&gap-or-hole=${STATE}`)).toEqual({
    ...read,
    href: `${path}?gap-or-hole=${STATE}#gap-or-hole`,
  });
  expect(readWallLink(`?gap-or-hole=${STATE}&page=${page}`)).toMatchObject(read);
});

test.each([
  '',
  '?page=lessons/x/',
  `?gap-or-hole=${STATE}`,
  `?page=https://example.org/x/&gap-or-hole=${STATE}`,
  `?page=//example.org/&gap-or-hole=${STATE}`,
  `?page=/example/&gap-or-hole=${STATE}`,
  `?page=../../x/&gap-or-hole=${STATE}`,
  `?page=javascript:alert(1)/&gap-or-hole=${STATE}`,
  '?page=lessons/x/&gap-or-hole=<b>',
])('nothing of %s', (search) => {
  expect(readWallLink(search)).toBeUndefined();
});
