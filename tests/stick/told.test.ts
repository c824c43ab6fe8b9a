/** What /offline/ and the README tell of the stick is what the commands do. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { stickOf } from '../../src/stick/pack.ts';
import { words } from '../../src/offline/page-words.en.ts';

const read = (name: string): string =>
  readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8');
const { lines, commands, after } = words.stick;
const told = [...lines, ...commands, ...after].join('\n');

test('every command is one that there is, in the README too', () => {
  const { scripts, engines } = JSON.parse(read('package.json')) as {
    scripts: Record<string, string>;
    engines: { node: string };
  };
  for (const command of commands) {
    const [, name] = /^npm run (\w+)$/u.exec(command) ?? [];
    expect(name === undefined ? command === 'npm ci' : name in scripts, command).toBe(true);
    expect(read('README.md')).toContain(`\`${command}\``);
  }
  expect(told).toContain(`Node ${engines.node.replace('>=', '')} or newer`);
});

test('the folder and the page to read first are those in the file', () => {
  const names = Object.keys(stickOf(new URL('../../src/stick/files', import.meta.url).pathname));
  const folders = new Set(names.map((name) => name.split('/')[0]));
  expect([...folders].map((folder) => told.includes(`folder ${String(folder)}`))).toEqual([true]);
  expect(names).toContainEqual(expect.stringMatching(/\/READ ME FIRST\.html$/u));
  expect(told).toContain('“READ ME FIRST”');
});

test('what works without internet names the meetings with their votes and notes', () => {
  expect(words.works.lines.join(' ')).toMatch(/meetings, with their votes .* notes/u);
});
