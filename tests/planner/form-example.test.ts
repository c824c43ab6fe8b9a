// The number that a refusal gives as an example is one that a healthy car of the chosen transmission shows there.
import { describe, expect, it } from 'vitest';
import { decodeTable, groundsOf, hypothesesOf } from '../../src/diagnosis/index.ts';
import { keptSecondTable } from '../../src/diagnosis/kept-second-table.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { EMPTY, readDraft } from '../../src/planner/form-model.ts';

const on = (table: string) => groundsOf(hypothesesOf(decodeTable(table)));
const tables = { first: on(keptTable), second: on(keptSecondTable), none: null };

describe('an example of what to write', () => {
  // What the sound car reads by the engine: src/cases/sound.ts with no clearance and no gauge of its own.
  it.each([
    ['stopTime.drive.hot', 'first', 'us', 0.73],
    ['stopTime.drive.hot', 'second', 'si', 0.7],
    ['line.drive.700.hot', 'first', 'us', 87],
    ['line.drive.700.hot', 'first', 'si', 600],
    ['clutch.forward.1500.hot', 'second', 'si', 839],
    ['takeoffSlip.drive.hot', 'first', 'us', 8.3],
    // Not here yet: the middle of what cars show, and no half a minute.
    ['stopTime.drive.hot', 'none', 'us', 1.25],
  ] as const)('%s on the %s in %s is about %s', (test, table, system, about) => {
    const read = readDraft({ ...EMPTY, test, text: 'late' }, system, tables[table]);
    const said = read.ok ? '' : read.trouble.sentence;
    const example = Number(/such as ([\d.]+)\.$/u.exec(said)?.[1]);
    expect(Math.abs(example / about - 1), said).toBeLessThan(0.1);
  });
});
