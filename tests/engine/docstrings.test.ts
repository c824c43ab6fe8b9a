import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import * as engine from '../../src/engine/index.ts';

const ROOT = fileURLToPath(new URL('../../src', import.meta.url));
/** Arithmetic, held to the same rules. */
const FOLDERS = ['engine', 'shop'];

interface Exported {
  readonly file: string;
  readonly name: string;
  readonly doc: string;
  /** Parameter names of a function; undefined for anything else. */
  readonly parameters: readonly string[] | undefined;
}

/** The last doc comment before a node, without its stars. */
function docOf(node: ts.Node): string {
  const comments = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc);
  const text = comments.at(-1)?.getText() ?? '';
  return text
    .replace(/^\/\*\*|\*\/$/g, '')
    .split('\n')
    .map((line) => line.replace(/^\s*\*? ?/, ''))
    .join('\n')
    .trim();
}

function isExported(node: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(node) &&
    (ts.getModifiers(node) ?? []).some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword)
  );
}

function exportsOf(path: string): Exported[] {
  const source = ts.createSourceFile(
    path,
    readFileSync(path, 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const file = relative(ROOT, path);
  return source.statements.filter(isExported).flatMap((node): Exported[] => {
    const doc = docOf(node);
    if (ts.isFunctionDeclaration(node)) {
      const parameters = node.parameters.map((parameter) => parameter.name.getText());
      return [{ file, name: node.name?.text ?? 'default', doc, parameters }];
    }
    if (ts.isVariableStatement(node)) {
      return node.declarationList.declarations.map((declaration) => {
        const value = declaration.initializer;
        const parameters =
          value !== undefined && (ts.isArrowFunction(value) || ts.isFunctionExpression(value))
            ? value.parameters.map((parameter) => parameter.name.getText())
            : undefined;
        return { file, name: declaration.name.getText(), doc, parameters };
      });
    }
    if (
      ts.isInterfaceDeclaration(node) ||
      ts.isTypeAliasDeclaration(node) ||
      ts.isClassDeclaration(node)
    ) {
      return [{ file, name: node.name?.text ?? 'default', doc, parameters: undefined }];
    }
    // `export * from` has nothing of its own to explain.
    return [];
  });
}

const FILES = FOLDERS.flatMap((folder) =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(ROOT, folder, name)),
);
const ALL = FILES.flatMap(exportsOf);
const FUNCTIONS = ALL.filter(
  (one): one is Exported & { parameters: readonly string[] } => one.parameters !== undefined,
);
const REST = ALL.filter((one) => one.parameters === undefined);

/** A tag's text, up to the next tag or headed line. */
function tag(doc: string, start: RegExp): string | undefined {
  const lines = doc.split('\n');
  const first = lines.findIndex((line) => start.test(line));
  if (first < 0) return undefined;
  const rest = lines.slice(first + 1);
  const end = rest.findIndex((line) => /^(@|Range:|Source:|Leaves out:|Equation:|\s*$)/.test(line));
  return [lines[first], ...rest.slice(0, end < 0 ? rest.length : end)].join(' ');
}

const UNIT = /\[[^\]]+\]/;

function lacks({ doc, parameters }: { doc: string; parameters: readonly string[] }): string[] {
  const missing: string[] = [];
  const summary = doc.split('\n')[0] ?? '';
  if (summary === '' || summary.startsWith('@')) missing.push('a first line that says what it is');
  for (const parameter of parameters) {
    const text = tag(doc, new RegExp(`^@param ${parameter}\\b`));
    if (text === undefined) missing.push(`@param ${parameter}`);
    else if (!UNIT.test(text)) missing.push(`a [unit] in @param ${parameter}`);
  }
  for (const [, named] of doc.matchAll(/^@param (\w+)/gm)) {
    if (!parameters.includes(named as string)) missing.push(`a parameter called ${named}`);
  }
  const returns = tag(doc, /^@returns\b/);
  if (returns === undefined) missing.push('@returns');
  else if (!UNIT.test(returns)) missing.push('a [unit] in @returns');
  if (!/^Range: \S/m.test(doc)) missing.push('Range:');
  if (!/^Source: \S/m.test(doc)) missing.push('Source:');
  if (!/^@example\n\S/m.test(doc)) missing.push('@example');
  return missing;
}

/** `expression // value` lines under @example. */
function examplesOf(doc: string): { expression: string; expected: string }[] {
  const start = doc.search(/^@example$/m);
  if (start < 0) return [];
  return doc
    .slice(start)
    .split('\n')
    .slice(1)
    .filter((line) => line.includes(' // '))
    .map((line) => {
      const cut = line.lastIndexOf(' // ');
      return { expression: line.slice(0, cut).trim(), expected: line.slice(cut + 4).trim() };
    });
}

/** Half of the last digit given, and never more than a thousandth of the value. */
function toleranceOf(text: string): number {
  const [, mantissa = '', exponent = '0'] = /^-?([\d.]+)(?:e([+-]?\d+))?$/.exec(text) ?? [];
  const decimals = (mantissa.split('.')[1] ?? '').length;
  const half = 0.5 * 10 ** (Number(exponent) - decimals);
  const value = Math.abs(Number(text));
  return Math.min(half, 1e-3 * value) + 1e-12 * value;
}

describe('every exported function of the engine and the shop', () => {
  it('is found at all', () => {
    expect(FUNCTIONS.length).toBeGreaterThan(25);
    for (const name of ['gapFlow', 'solveSteady', 'viscosityIndex', 'airTest', 'findRoot']) {
      expect(FUNCTIONS.map((one) => one.name)).toContain(name);
    }
  });

  it.each(FUNCTIONS)('$name in $file says unit, range, source and example', (one) => {
    expect(lacks(one), `${one.name} in ${one.file} lacks`).toEqual([]);
  });

  it.each(FUNCTIONS)('$name in $file: its example comes true', async (one) => {
    const examples = examplesOf(one.doc);
    expect(examples.length, 'at least one `expression // value`').toBeGreaterThan(0);
    const own = (await import(join(ROOT, one.file))) as Record<string, unknown>;
    // Zero or false would come out of a stub as well.
    const telling = examples.filter(({ expected }) => !['0', 'false', "''"].includes(expected));
    expect(telling.length, 'an example worth reading').toBeGreaterThan(0);
    for (const { expression, expected } of examples) {
      expect(expression, 'the example uses the function').toContain(`${one.name}(`);
      const got: unknown = runInNewContext(`(${expression})`, { ...engine, ...own });
      if (/^(true|false|'[^']*')$/.test(expected)) {
        expect(got, expression).toBe(runInNewContext(expected));
        continue;
      }
      const wanted = Number(expected);
      expect(Number.isFinite(wanted), `${expected} is a number`).toBe(true);
      expect(typeof got, `${expression} gives a number`).toBe('number');
      expect(
        Math.abs((got as number) - wanted),
        `${expression} is ${String(got)}, not ${expected}`,
      ).toBeLessThanOrEqual(toleranceOf(expected));
    }
  });
});

describe('every other export of them', () => {
  it.each(REST)('$name in $file says what it is', ({ doc }) => {
    expect(doc).toMatch(/\w.*\w/);
  });
});

describe('the checker itself', () => {
  const good = [
    'Twice a length.',
    '',
    '@param x length [m]',
    '@returns length [m]',
    'Range: any.',
    'Source: arithmetic.',
    '@example',
    'twice(2) // 4',
  ].join('\n');

  it('accepts a full comment and names what a poor one lacks', () => {
    expect(lacks({ doc: good, parameters: ['x'] })).toEqual([]);
    expect(lacks({ doc: good.replace('length [m]', 'length'), parameters: ['x'] })).toEqual([
      'a [unit] in @param x',
    ]);
    expect(
      lacks({ doc: good.replace('@returns length [m]', '@returns length'), parameters: ['x'] }),
    ).toEqual(['a [unit] in @returns']);
    expect(lacks({ doc: good.replace('Range: any.\n', ''), parameters: ['x'] })).toEqual([
      'Range:',
    ]);
    expect(lacks({ doc: good, parameters: ['x', 'y'] })).toEqual(['@param y']);
    expect(lacks({ doc: '', parameters: [] })).toHaveLength(5);
  });

  it('holds an example to its digits and to a thousandth', () => {
    expect(toleranceOf('31.1')).toBeCloseTo(0.0311, 6);
    expect(toleranceOf('313.15')).toBeCloseTo(0.005, 6);
    expect(toleranceOf('4e5')).toBeCloseTo(400, 3);
    expect(toleranceOf('5.75716e-8')).toBeLessThan(6e-14);
    expect(examplesOf(good)).toEqual([{ expression: 'twice(2)', expected: '4' }]);
  });
});
