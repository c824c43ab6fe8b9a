import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { answerAll } from '../../src/solve/answer.ts';

const CLI = fileURLToPath(new URL('../../src/solve/cli.ts', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'solve-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const good = { kind: 'airTest', circuit: 'high' };
const bad = { kind: 'airTest', circuit: 'pump' };

function run(arguments_: readonly string[], input?: string) {
  const ended = spawnSync(process.execPath, [CLI, ...arguments_], {
    input: input ?? '',
    encoding: 'utf8',
    timeout: 20_000,
  });
  return { status: ended.status, out: ended.stdout, err: ended.stderr };
}

function fileWith(text: string): string {
  const path = join(folder, 'requests.json');
  writeFileSync(path, text);
  return path;
}

/** Standard output is one JSON array and a line end, whatever happened. */
function onlyAnswers(out: string): unknown[] {
  const answers = JSON.parse(out) as unknown;
  expect(Array.isArray(answers)).toBe(true);
  expect(out.startsWith('[') && out.endsWith(']\n')).toBe(true);
  return answers as unknown[];
}

describe('the command line', () => {
  it('reads a file, writes the answers and nothing else, exits 0', () => {
    const { status, out, err } = run([fileWith(JSON.stringify([good, good]))]);
    expect(onlyAnswers(out)).toEqual(answerAll([good, good]).answers);
    expect({ status, err }).toEqual({ status: 0, err: '' });
  });

  it('reads one request from standard input', () => {
    const { status, out } = run([], JSON.stringify(good));
    expect(onlyAnswers(out)).toEqual(answerAll(good).answers);
    expect(status).toBe(0);
  });

  it('with one bad request answers the others and exits 1', () => {
    const { status, out } = run([], JSON.stringify([good, bad, good]));
    const answers = onlyAnswers(out);
    expect(answers).toEqual(answerAll([good, bad, good]).answers);
    expect(Object.keys(answers[1] as object)).toEqual(['error', 'path']);
    expect(status).toBe(1);
  });

  it.each([
    ['no JSON', '{"kind": "gap",', /standard input is not JSON: .+\./],
    ['nothing', '', /standard input is not JSON: .+\./],
    [
      'NaN, which is not JSON',
      '{"kind": "gap", "pressure_kPa": NaN}',
      /standard input is not JSON/,
    ],
  ])('given %s says so in one answer and exits 1', (_name, text, sentence) => {
    const { status, out, err } = run([], text);
    const answers = onlyAnswers(out);
    expect(answers).toHaveLength(1);
    expect((answers[0] as { error: string }).error).toMatch(sentence);
    expect((answers[0] as { path: string }).path).toBe('');
    expect({ status, err }).toEqual({ status: 1, err: '' });
  });

  it('given a file that is not there names it and exits 1', () => {
    const missing = join(folder, 'absent.json');
    const { status, out } = run([missing]);
    const [only] = onlyAnswers(out) as { error: string; path: string }[];
    expect(only?.error).toContain(missing);
    expect(only?.error).toContain('cannot be read');
    expect(status).toBe(1);
  });

  it('explains itself on standard error when asked', () => {
    const { status, out, err } = run(['--help']);
    expect(out).toBe('');
    expect(err).toContain('requests.json');
    expect(status).toBe(0);
  });
});
