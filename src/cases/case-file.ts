/** The file of a written case that its page fetches: its words, and what every test reads on its car. Node only. */
import { applyFaults, training, type FaultSet } from '../engine/index.ts';
import { TESTS, type TakenReading } from '../diagnosis/index.ts';
import { carOfCase } from './play.ts';
import { stopTraceOf, type StopTrace } from './trace.ts';
import type { WrittenCase } from './written.ts';

export interface CaseFile extends Omit<WrittenCase, 'byHand'> {
  /** By the id of the test, in shop units. */
  readonly readings: Readonly<Record<string, TakenReading['value']>>;
  readonly traces: Readonly<Record<string, StopTrace>>;
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
  return { ...written, readings, traces };
}
