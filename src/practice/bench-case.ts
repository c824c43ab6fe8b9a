import type { CaseFile } from '../cases/case-file.ts';
import { causesOf, type Named } from '../cases/judge.ts';
import type { Look, Question, Repair } from '../cases/lists.ts';
import type { On } from '../cases/made-key.ts';
import type { StopTrace } from '../cases/trace.ts';
import type { NumericTest, TakenReading, Test } from '../diagnosis/index.ts';
import type { FaultSet } from '../engine/index.ts';

/** The file of a case with the lesson that follows it, as the page fetches it. */
export interface CasePageFile extends CaseFile {
  readonly next: { readonly href: string; readonly title: string } | null;
}

/** What a written case tells after it has been handed in. */
export interface Story {
  readonly what?: string;
  readonly tempts: string;
  readonly comeback: { readonly hours: number; readonly words: string };
  readonly together: string;
  readonly takeaway: string;
  /** Where to read on, if it is written. */
  readonly lesson: CasePageFile['next'];
}

/** A car on the bench, written or made: all that the page needs of it. */
export interface BenchCase {
  /** Under this name the device remembers it. */
  readonly key: string;
  readonly transmission: On;
  readonly title: string;
  readonly car: string;
  readonly selection: 'electronic' | 'mechanical';
  readonly complaint: string;
  readonly asked: Readonly<Record<Question, string>>;
  readonly looks: Partial<Readonly<Record<Look, string>>>;
  readonly coldMorning: boolean;
  readonly read: (test: Test) => TakenReading;
  /** What a sound car of its kind reads. */
  readonly sound: (test: NumericTest) => number | undefined;
  readonly trace: (test: string) => StopTrace | undefined;
  readonly causes: readonly Named[];
  readonly decides: readonly string[];
  readonly repair: readonly Repair[];
  /** What may go with it. */
  readonly also: readonly Repair[];
  readonly story?: Story;
}

const isIn = <Key extends string>(
  record: Readonly<Record<Key, unknown>>,
  key: string,
): key is Key => Object.hasOwn(record, key);

export function fromFile(file: CasePageFile): BenchCase {
  const { id, outside, readings, sound, traces, tempts, comeback, together, takeaway, next } = file;
  return {
    key: id,
    transmission: 'training',
    title: file.title,
    car: file.car,
    selection: file.selection,
    complaint: file.complaint,
    asked: file.asked,
    looks: Object.fromEntries(
      Object.entries(file.looks ?? {}).filter(([, said]) => said !== undefined),
    ),
    coldMorning: file.coldMorning ?? false,
    read: (test) => ({ test, value: isIn(readings, test.id) ? (readings[test.id] ?? null) : null }),
    sound: (test) => sound[test.id],
    trace: (test) => traces[test],
    causes: causesOf({ ...file, faults: file.faults as FaultSet }),
    decides: file.decides,
    repair: file.repair,
    also: file.also ?? [],
    story: {
      ...(outside && { what: outside.what }),
      tempts,
      comeback,
      together,
      takeaway,
      lesson: next,
    },
  };
}
