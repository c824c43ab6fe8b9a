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
    timeout: 60_000,
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

// Each starts a process, which a busy machine lets wait.
describe('the command line', { timeout: 60_000 }, () => {
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
    ['no JSON', '{"kind": "gap",', /Standard input is not JSON: .+\./],
    ['nothing', '', /Standard input is empty; it must be one request/],
    [
      'NaN, which is not JSON',
      '{"kind": "gap", "pressure_kPa": NaN}',
      /Standard input is not JSON/,
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
    expect(only?.error).toContain('cannot be read: there is no such file.');
    expect(status).toBe(1);
  });

  it.each([
    ['a folder', () => [folder], /cannot be read: it is a folder, not a file\.$/],
    ['two files', () => ['a.json', 'b.json'], /^2 files were named; name one/],
    ['an option there is not', () => ['--all'], /no option --all; the only one is --help\.$/],
    ['a file within a file', () => [join(fileWith('{}'), 'x')], /cannot be read: part of the path/],
    [
      'more than it reads at once',
      () => [fileWith(`[${' '.repeat(24e6)}]`)],
      /is 24\.0 MB of requests; at most 16\.0 MB/,
    ],
    ['brackets without end', () => [fileWith('['.repeat(1e6))], /nested more than 10000 deep/],
  ])('given %s says so in one answer and exits 1', (_name, arguments_, sentence) => {
    const { status, out, err } = run(arguments_());
    const answers = onlyAnswers(out) as { error: string; path: string }[];
    expect(answers).toHaveLength(1);
    expect(answers[0]?.error).toMatch(sentence);
    expect({ status, err }).toEqual({ status: 1, err: '' });
  });

  it('reads standard input under the name -, and past a byte order mark', () => {
    const { status, out } = run(['-'], `\uFEFF${JSON.stringify(good)}`);
    expect(onlyAnswers(out)).toEqual(answerAll(good).answers);
    expect(status).toBe(0);
  });

  it('writes what JSON.stringify writes, to the letter', () => {
    const { out } = run([], JSON.stringify([good, bad]));
    expect(out).toBe(`${JSON.stringify(answerAll([good, bad]).answers, null, 2)}\n`);
    expect(run([], '[]').out).toBe('[]\n');
  });

  it('answers the others beside 4,500 brackets in one', () => {
    const deep = `{"kind": "fluid", "fluid": ${'['.repeat(4500)}${']'.repeat(4500)}, "temperature_C": 20}`;
    const { status, out } = run([], `[${JSON.stringify(good)}, ${deep}, ${JSON.stringify(good)}]`);
    const answers = onlyAnswers(out);
    expect([answers[0], answers[2]]).toEqual([
      answerAll(good).answers[0],
      answerAll(good).answers[0],
    ]);
    expect(answers[1]).toEqual({
      error: 'fluid is nested more than 8 deep; no request needs that.',
      path: 'fluid',
    });
    expect(status).toBe(1);
  });

  it('ends in silence where the reader has left, as head does', () => {
    const many = fileWith(JSON.stringify(Array.from({ length: 20_000 }, () => good)));
    const { status, stdout, stderr } = spawnSync(
      'bash',
      ['-o', 'pipefail', '-c', '"$0" "$1" "$2" | head -n 1', process.execPath, CLI, many],
      { encoding: 'utf8', timeout: 60_000 },
    );
    expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: '[\n', stderr: '' });
  });

  it('explains itself on standard error when asked', () => {
    const { status, out, err } = run(['--help']);
    expect(out).toBe('');
    expect(err).toContain('requests.json');
    expect(status).toBe(0);
  });
});
