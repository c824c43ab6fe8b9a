import { once } from 'node:events';
import { answer, listOf } from './answer.ts';
import type { Answer } from './answer.ts';
import { readRequests } from './read-requests.ts';
import { cut } from './shown.ts';

const HELP = `Reads one request or an array of requests as JSON, from a file or from standard input,
and writes an array of answers. Usage: npm run -s solve -- requests.json
Without a file, or with - in its place, it reads standard input.`;

// Whoever reads may stop early, as head does: then there is nobody left to tell, and nothing went wrong.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  process.stderr.write(`The answers cannot be written: ${error.message}.\n`);
  process.exit(1);
});

/** One answer at a time, so that no number of them has to fit in memory; the text is that of one array. */
async function write(given: Iterable<Answer>): Promise<void> {
  let separator = '[\n';
  let refused = false;
  for (const one of given) {
    refused ||= 'error' in one;
    const text = JSON.stringify(one, null, 2).replaceAll('\n', '\n  ');
    if (!process.stdout.write(`${separator}  ${text}`)) await once(process.stdout, 'drain');
    separator = ',\n';
  }
  process.stdout.write(separator === '[\n' ? '[]\n' : '\n]\n');
  process.exitCode = refused ? 1 : 0;
}

function* answersTo(paths: readonly string[]): Generator<Answer> {
  const [path = '-', second] = paths;
  const option = paths.find((given) => given.startsWith('-') && given !== '-');
  if (option !== undefined) {
    yield { error: `There is no option ${cut(option)}; the only one is --help.`, path: '' };
    return;
  }
  if (second !== undefined) {
    yield {
      error: `${paths.length} files were named; name one, since one array of answers is written.`,
      path: '',
    };
    return;
  }
  const given = readRequests(path);
  if ('error' in given) yield { error: given.error, path: '' };
  else for (const request of listOf(given.requests)) yield answer(request);
}

const given = process.argv.slice(2);
if (given.includes('--help') || given.includes('-h')) process.stderr.write(`${HELP}\n`);
else await write(answersTo(given));
