import { mkdirSync, writeFileSync } from 'node:fs';

/** One line of the table of proof. */
export interface Figure {
  readonly what: string;
  readonly value: string | number;
  /** What it has to reach, in words. */
  readonly bar: string;
  readonly met: boolean;
}

const FOLDER = 'test-results/quality';

/** Keeps what a spec has measured, for the table of all of it. */
export function keepFigures(name: string, figures: readonly Figure[]): void {
  mkdirSync(FOLDER, { recursive: true });
  // The proof is named by the first word of its specs.
  const command = `npm run quality -- ${name.split('-')[0] ?? name}`;
  const told = { name, figures: figures.map((figure) => ({ ...figure, command })) };
  writeFileSync(`${FOLDER}/${name}.json`, `${JSON.stringify(told, null, 2)}\n`);
}

/** A count of what is wrong, which has to be nothing. */
export const none = (what: string, wrong: readonly unknown[]): Figure => ({
  what,
  value: wrong.length,
  bar: '0',
  met: wrong.length === 0,
});
/** How much was looked at: proof that something was. */
export const looked = (what: string, value: number, least: number): Figure => ({
  what,
  value,
  bar: `${least} or more`,
  met: value >= least,
});
