/** What taking a file in would change, and what it would cost, in words. */
import { listOf } from '../quantity/lists.ts';
import type { Comparison } from '../storage/bundle/compare.ts';
import type { RecordsCompared } from '../storage/bundle/compare-records.ts';
import { recordNames } from '../storage/bundle/records.ts';
import type { Sides } from '../storage/bundle/take-in.ts';
import { planInWords, rehearsalInWords } from './in-words.ts';
import type { Opened } from './model.ts';
import { words } from './words.en.ts';

const { take } = words;
type Say = (p: { readonly count: string }) => string;

const several = (parts: readonly (readonly [number, Say])[]): string =>
  listOf(parts.flatMap(([count, say]) => (count === 0 ? [] : [say({ count: String(count) })])));

const ofRecords = ({ added, same, completed, replaced, deleted, hereOnly }: RecordsCompared) =>
  several([
    [added.length, take.added],
    [same, take.same],
    [completed.length, take.completed],
    [replaced.length, take.differ],
    [deleted.length, take.deleted],
    [hereOnly, take.hereOnly],
  ]);

/** A row for each part that one side has something of. */
export function rowsOf(compared: Comparison): readonly (readonly [string, string])[] {
  const { answers, lessons, plan, rehearsal, rehearsed, settings, cases, columns } = compared;
  const { rows, added, same, differ, differKept, hereOnly, one } = take;
  const all: [string, string][] = [
    [
      rows.answers,
      several([
        [answers.added, added],
        [answers.same, same],
        [answers.hereOnly, hereOnly],
      ]),
    ],
    [
      rows.lessons,
      several([
        [lessons.added.length, added],
        [lessons.same.length, same],
        [lessons.hereOnly.length, hereOnly],
      ]),
    ],
    [rows.plan, plan === 'neither' ? '' : one[plan]],
    [rows.rehearsal, rehearsal === 'neither' ? '' : one[rehearsal]],
    [
      rows.rehearsed,
      several([
        [rehearsed.added.length, added],
        [rehearsed.same.length, same],
        [rehearsed.differ.length, differKept],
        [rehearsed.hereOnly.length, hereOnly],
      ]),
    ],
    [
      rows.cases,
      several([
        [cases.added.length, added],
        [cases.same.length, same],
        [cases.differ.length, differ],
        [cases.hereOnly.length, hereOnly],
      ]),
    ],
    ...recordNames.map((name): [string, string] => [rows[name], ofRecords(compared[name])]),
    [
      rows.columns,
      several([
        [columns.added.length, added],
        [columns.same.length, same],
        [columns.differ.length, differKept],
        [columns.hereOnly.length, hereOnly],
      ]),
    ],
    [rows.settings, settings === 'neither' ? '' : one[settings]],
  ];
  return all.filter(([, said]) => said !== '');
}

const lostOf = ({ replaced, deleted }: RecordsCompared): string[] => [
  ...(replaced.length > 0 ? [take.lost.replaced({ names: listOf(replaced) })] : []),
  ...(deleted.length > 0 ? [take.lost.deleted({ names: listOf(deleted) })] : []),
];

/** What is here and would not be afterward, as things are chosen now. */
export function lossesOf({ compared, here, toChoose }: Opened, sides: Sides): readonly string[] {
  const { cases, rehearsed } = compared;
  const underWay = here.rehearsal?.rehearsal;
  const fromFile = new Set(toChoose.filter((part) => sides[part] === 'file'));
  return [
    ...(fromFile.has('plan') && here.plan
      ? [take.lost.plan({ what: planInWords(here.plan, here) })]
      : []),
    ...(fromFile.has('rehearsal') && underWay
      ? [take.lost.rehearsal({ what: rehearsalInWords(underWay) })]
      : []),
    ...(rehearsed.dropped > 0 ? [take.lost.rehearsed({ count: String(rehearsed.dropped) })] : []),
    ...(fromFile.has('cases') ? [take.lost.cases({ count: String(cases.differ.length) })] : []),
    ...(cases.dropped > 0 ? [take.lost.dropped({ count: String(cases.dropped) })] : []),
    ...recordNames.flatMap((name) => (fromFile.has(name) ? lostOf(compared[name]) : [])),
    ...(fromFile.has('settings') ? [take.lost.settings] : []),
  ];
}
