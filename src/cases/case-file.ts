/** The file of a written case that its page fetches: its words, and what every test reads on its car. Node only. */
import { applyFaults, training, type FaultSet } from '../engine/index.ts';
import { isNumeric, TESTS, type TakenReading } from '../diagnosis/index.ts';
import { carOfCase } from './play.ts';
import { soundReader } from './sound.ts';
import { stopTraceOf, type StopTrace } from './trace.ts';
import type { WrittenCase } from './written.ts';

export interface CaseFile extends Omit<WrittenCase, 'byHand'> {
  /** By the id of the test, in shop units. */
  readonly readings: Readonly<Record<string, TakenReading['value']>>;
  /** What each test that reads a number reads on a sound car. */
  readonly sound: Readonly<Record<string, number>>;
  readonly traces: Readonly<Record<string, StopTrace>>;
}

/** Of no case in particular: worked out once for all files. */
let sound: CaseFile['sound'] | undefined;
function soundOnes(): CaseFile['sound'] {
  const read = soundReader(training);
  return Object.fromEntries(
    TESTS.filter(isNumeric).map((test) => [test.id, Number(read(test).toPrecision(4))]),
  );
}

export function caseFile({ byHand, ...written }: WrittenCase): CaseFile {
  const read = carOfCase(training, written.id, { ...written, byHand });
  const readings = Object.fromEntries(TESTS.map((test) => [test.id, read(test).value]));
  const plant = applyFaults(training, written.faults as FaultSet);
  const hands = new Set((byHand ?? []).map(({ test }) => test));
  const traces = Object.fromEntries(
    TESTS.filter(({ kind }) => kind === 'stopTime' && !hands.has(kind)).map(({ id }) => [
      id,
      stopTraceOf(plant, id, readings[id] as number | null),
    ]),
  );
  sound ??= soundOnes();
  return { ...written, readings, sound, traces };
}
