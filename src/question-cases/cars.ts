/** The cars that the options of a short case stand for. */
import { nominalReader } from '../diagnosis/cars.ts';
import { CLASSES, hasSeverity, NODES } from '../diagnosis/hypotheses.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import { decodeTable } from '../diagnosis/table-code.ts';
import { columnOf } from '../diagnosis/tests.ts';
import { applyFaults, CIRCUITS, FAULT_IDS, training, type FaultSet } from '../engine/index.ts';
import type { CaseQuestion } from '../quiz/schema.ts';

/** What a test reads on a car, on the solver's scale. */
export type HiddenCar = (test: string) => number;
type Option = CaseQuestion['options'][number];

const table = decodeTable(keptTable);

/** Throws a sentence on a fault or a circuit that there is not. */
function faultsNamed(faults: Option['faults']): FaultSet {
  const [names, circuits]: readonly (readonly string[])[] = [FAULT_IDS, CIRCUITS];
  for (const [name, { circuit }] of Object.entries(faults)) {
    if (!names?.includes(name))
      throw new Error(`There is no fault "${name}". There are: ${FAULT_IDS.join(', ')}.`);
    if (circuit !== undefined && !circuits?.includes(circuit))
      throw new Error(`There is no circuit "${circuit}". There are: ${CIRCUITS.join(', ')}.`);
  }
  return faults;
}

/** All cars that a wrong option may stand for: with that fault, as bad as it says or worse. */
function carsFrom({ id, faults }: Option): readonly HiddenCar[] {
  faultsNamed(faults);
  const [first, ...more] = Object.entries(faults);
  if (more.length > 0) throw new Error(`The option "${id}" has more than one fault.`);
  const [name, { severity, circuit }] = first ?? ['healthy', { severity: 1, circuit: undefined }];
  const at = CLASSES.findIndex((one) => one.name === name && one.circuit === circuit);
  const of = CLASSES[at];
  if (of === undefined)
    throw new Error(
      `The fault "${name}" of the option "${id}" ${circuit === undefined ? 'needs' : 'takes no'} "circuit".`,
    );
  return (table[at] ?? [])
    .filter((_, node) => !hasSeverity(of.name) || (NODES[node] ?? 0) >= severity - 1e-9)
    .map((row) => (test) => row[columnOf(test)]?.nominal ?? Number.NaN);
}

export function carsOf(options: readonly Option[]): {
  readonly hidden: HiddenCar;
  readonly others: readonly { readonly id: string; readonly cars: readonly HiddenCar[] }[];
} {
  const right = options.find(({ correct }) => correct);
  return {
    hidden: nominalReader(applyFaults(training, faultsNamed(right?.faults ?? {}))),
    others: options
      .filter(({ correct }) => !correct)
      .map((option) => ({ id: option.id, cars: carsFrom(option) })),
  };
}
