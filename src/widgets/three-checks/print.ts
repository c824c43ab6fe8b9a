/** This simulation's own words for its names and readings. */
import type { ComplaintId } from '../../cases/complaints.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { count, minutes } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { ThreeChecksModel } from './model.ts';
import { readOf } from './readings.ts';
import { words } from './words.en.ts';

interface Told {
  readonly name: string;
  readonly causes: Readonly<Record<string, string>>;
  readonly checks: Readonly<
    Record<string, { readonly name: string; readonly says: readonly string[] }>
  >;
}
const toldOf = (complaint: ComplaintId): Told => words.complaints[complaint];

export const complaintName = (complaint: ComplaintId): string => toldOf(complaint).name;
export const causeName = (complaint: ComplaintId, cause: string): string =>
  toldOf(complaint).causes[cause] ?? '';
export const checkName = (complaint: ComplaintId, check: string): string =>
  toldOf(complaint).checks[check]?.name ?? '';
export const answers = (complaint: ComplaintId, check: string): readonly string[] =>
  toldOf(complaint).checks[check]?.says ?? [];

export const printMinutes = (value: number): string => format(value, minutes, 'si');
export const printCount = (value: number): string => formatNumber(value, count, 'si');

/** What a check said to this car, with what was read where the model has it. */
function saidBy({ givens, cause, said }: ThreeChecksModel, check: string, system: UnitSystem) {
  const complaint = givens.complaint.value;
  const answer = answers(complaint, check)[said(check)] ?? '';
  const read = readOf(complaint, check, cause.value);
  if (read === null) return answer;
  const [first = '', second] = read.values.map((value) => format(value, read.quantity, system));
  return words.said({
    said: answer,
    read: second === undefined ? first : words.both({ first, second }),
  });
}

/** Before a check is taken: its minutes, and what it can say; after it, what it said. */
export function underCheck(model: ThreeChecksModel, check: string, system: UnitSystem): string {
  if (model.taken.value.includes(check)) return words.after({ said: saidBy(model, check, system) });
  return words.before({
    minutes: printMinutes(model.checkOf(check).minutes),
    can: answers(model.givens.complaint.value, check).join('; '),
  });
}
