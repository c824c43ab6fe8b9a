// npm run quality: measures what the site claims of itself and keeps the figures in figures.json and figures.md beside this file; the
// page /proof/ prints them. `npm run quality -- security speed` proves those two again and leaves the other figures as they were;
// --dry keeps nothing. A proof is a function of proofs.ts, Playwright specs tests/quality/<name>*.spec.ts, or both.
import { globSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { printTable } from '../bench/row.ts';
import { keptFigures, givenReasons, unexplained, type Figure, type Proof } from './form.ts';
import { machine } from './machine.ts';
import { proofs, wordsOf } from './proofs.ts';
import { leftBy, root } from './run.ts';
import { markdown, titleOf } from './table.ts';

const specs = globSync('tests/quality/*.spec.ts', { cwd: root });
/** "access-walk.spec.ts" is of the proof "access". */
const proofOf = (spec: string): string => basename(spec).split(/[-.]/)[0] ?? '';
const names = [...new Set([...Object.keys(proofs), ...specs.map(proofOf)])];

const given = process.argv.slice(2);
const dry = given.includes('--dry');
const words = given.filter((word) => word !== '--dry');
const belongs = (word: string): boolean =>
  words.some((name) => wordsOf[name]?.includes(word) ?? false);
const asked = words.filter((word) => !belongs(word));
const strangers = asked.filter((name) => !names.includes(name));
if (strangers.length > 0) {
  console.error(`There is no proof ${strangers.join(', ')}. There are ${names.join(', ')}.`);
  process.exit(1);
}

async function prove(name: string): Promise<Proof> {
  console.log(`\n== ${titleOf(name)}`);
  const command = `npm run quality -- ${name}`;
  const own: readonly Figure[] =
    (await proofs[name]?.(words.filter((word) => wordsOf[name]?.includes(word)))) ?? [];
  const mine = specs.filter((spec) => proofOf(spec) === name);
  const seen =
    mine.length === 0 ? [] : leftBy('playwright', ['test', '--project=quality', ...mine], command);
  const figures = [...own, ...seen];
  const rows = figures.map(({ what, bar, value, met }) => ({
    what,
    aim: String(bar),
    measured: String(value),
    met,
  }));
  console.log(printTable(rows));
  return { name, on: new Date().toISOString().slice(0, 10), machine: machine(), figures };
}

async function keep(file: URL, text: string): Promise<void> {
  const path = fileURLToPath(file);
  writeFileSync(path, await format(text, { ...(await resolveConfig(path)), filepath: path }));
}

const kept = new Map(keptFigures().map((proof) => [proof.name, proof]));
for (const name of asked.length > 0 ? asked : names) {
  kept.set(name, await prove(name));
  // After each: what took minutes is not lost because a later one fails.
  if (dry) continue;
  const all = names.flatMap((one) => kept.get(one) ?? []);
  await keep(new URL('./figures.json', import.meta.url), JSON.stringify({ proofs: all }));
  await keep(new URL('./figures.md', import.meta.url), markdown(all, givenReasons()));
}
// A machine that keeps nothing may well reach a bar that this one misses.
const wrong = unexplained([...kept.values()], givenReasons()).filter(
  (sentence) => !dry || sentence.includes(' misses its bar'),
);
for (const sentence of wrong) console.error(`   ${sentence}`);
if (wrong.length > 0) process.exit(1);
