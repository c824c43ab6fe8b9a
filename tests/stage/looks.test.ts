/** Whatever comes onto the stage has its looks there: the list is written by hand, and this holds it whole. */
import { globSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { expect, test } from 'vitest';

const LIST = 'src/stage/everything.css';
const listed = Array.from(
  readFileSync(LIST, 'utf8').matchAll(/@import '([^']+)'/g),
  ([, path = '']) => join(dirname(LIST), path),
);
/** The planner and a sheet of one's own come onto no stage. */
const NOT = /^src\/(own-sheet|planner\/planner)/;

test.each(globSync('src/widgets/*/sim.ts').map((file) => dirname(file)))('%s', (folder) => {
  const page = readFileSync(join(folder, 'index.astro'), 'utf8');
  const looks = Array.from(page.matchAll(/import '([^']+\.css)'/g), ([, path = '']) =>
    relative('.', join(folder, path)),
  ).filter((path) => !NOT.test(path));
  expect(listed).toEqual(expect.arrayContaining(looks));
});
