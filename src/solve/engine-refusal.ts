import type { EngineError } from '../engine/index.ts';
import { FAULT_IDS } from '../engine/index.ts';
import { cut, shown } from './shown.ts';
import { valueAt } from './sentence.ts';
import type { Refusal } from './sentence.ts';

/** Where in a request an engine's argument came from, where it has another name there. */
const requestPaths: Readonly<Record<string, string>> = {
  tempC: 'temperature_C',
  kv40CSt: 'fluid.kv40_cSt',
  kv100CSt: 'fluid.kv100_cSt',
  density15: 'fluid.density15_kgm3',
};

function pathOf(argument: string): string {
  if ((FAULT_IDS as readonly string[]).includes(argument)) return `faults.${argument}`;
  return requestPaths[argument] ?? argument;
}

/** What the engine refused, under the key of the request that led there; the whole request where no one key did. */
export function engineRefusal(thrown: EngineError, keys: readonly string[]): Refusal {
  const path = pathOf(thrown.argument);
  const [first = ''] = path.split('.');
  return { error: thrown.message, path: keys.includes(first) ? path : '' };
}

/** The engine's parser of sheets does not print what was no number; here it is printed as it was written. */
const NO_NUMBER = / must be a number from (.+)\.$| is not a number; it must be from (.+)\.$/;

/** What the parser of sheets refused, under `transmission`. */
export function sheetRefusal(thrown: EngineError, given: unknown): Refusal {
  const keys = thrown.argument === '' ? [] : thrown.argument.split('.');
  const path = ['transmission', ...keys.map((key) => cut(key))].join('.');
  const [, one, two] = NO_NUMBER.exec(thrown.message) ?? [];
  const range = one ?? two;
  if (range === undefined) return { error: thrown.message, path };
  return {
    error: `${path} is ${shown(valueAt(given, keys))}; it must be a number from ${range}.`,
    path,
  };
}
