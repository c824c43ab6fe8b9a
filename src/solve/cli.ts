import { readFileSync } from 'node:fs';
import { answerAll } from './answer.ts';

const HELP = `Reads one request or an array of requests as JSON, from a file or from standard input,
and writes an array of answers. Usage: npm run -s solve -- requests.json`;

/** Reads the requests; what cannot be read at all is refused like a bad request, in one sentence. */
function read(path: string | undefined): { requests: unknown } | { error: string } {
  const source = path ?? 'standard input';
  let text: string;
  try {
    text = readFileSync(path ?? 0, 'utf8');
  } catch (thrown) {
    return { error: `${source} cannot be read: ${(thrown as Error).message}.` };
  }
  try {
    return { requests: JSON.parse(text) as unknown };
  } catch (thrown) {
    return { error: `${source} is not JSON: ${(thrown as Error).message}.` };
  }
}

const [path] = process.argv.slice(2);
if (path === '--help' || path === '-h') {
  process.stderr.write(`${HELP}\n`);
} else {
  const given = read(path);
  const result =
    'error' in given
      ? { answers: [{ error: given.error, path: '' }], refused: true }
      : answerAll(given.requests);
  process.stdout.write(`${JSON.stringify(result.answers, null, 2)}\n`);
  process.exitCode = result.refused ? 1 : 0;
}
