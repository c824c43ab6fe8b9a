/** `npm run -s qti -- read FILE`: what a package of ours holds, as the JSON that the site's pages fetch. */
import { readFileSync } from 'node:fs';
import type { QtiBank } from './bank.ts';
import { readQti } from './read.ts';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';

const { command } = words;

function run([what, file, more]: readonly string[]): QtiBank {
  if (what !== 'read' || file === undefined || more !== undefined) throw new Refusal(command.help);
  return readQti(bytesOf(file));
}

function bytesOf(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    const why = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new Refusal(command.noFile({ file, why }));
  }
}

// Whoever reads may stop early, as head does: then there is nobody left to tell.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

try {
  const { system, version, lessons } = run(process.argv.slice(2));
  process.stdout.write(`${JSON.stringify({ system, version, lessons }, null, 2)}\n`);
} catch (error) {
  if (!(error instanceof Refusal)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}
