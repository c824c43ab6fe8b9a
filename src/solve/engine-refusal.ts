import type { EngineError, SheetError } from '../engine/index.ts';
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

/** One fault of a sheet, under `transmission`. */
function sheetFault(fault: EngineError, given: unknown): Refusal {
  const keys = fault.argument === '' ? [] : fault.argument.split('.');
  const path = ['transmission', ...keys.map((key) => cut(key))].join('.');
  const [, one, two] = NO_NUMBER.exec(fault.message) ?? [];
  const range = one ?? two;
  if (range === undefined) return { error: fault.message, path };
  return {
    error: `${path} is ${shown(valueAt(given, keys))}; it must be a number from ${range}.`,
    path,
  };
}

/** An answer is one line that somebody reads: what stands beyond this many characters is counted. */
const LONGEST = 1200;

/** What the parser of sheets refused: every fault in a sentence of its own, under the path of the first. */
export function sheetRefusal(thrown: SheetError, given: unknown): Refusal {
  const faults = thrown.faults.map((fault) => sheetFault(fault, given));
  const sentences: string[] = [];
  let length = 0;
  for (const { error } of faults) {
    length += error.length + 1;
    if (sentences.length > 0 && length > LONGEST) break;
    sentences.push(error);
  }
  const beyond = faults.length - sentences.length;
  if (beyond > 0) {
    sentences.push(
      beyond === 1 ? 'One more fault follows.' : `${String(beyond)} more faults follow.`,
    );
  }
  return { error: sentences.join(' '), path: faults[0]?.path ?? 'transmission' };
}
