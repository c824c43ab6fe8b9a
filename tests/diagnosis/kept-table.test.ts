/** The table that is shipped is the engine's: rows of it worked out anew. `npm run table` makes it again. */
import { describe, expect, test } from 'vitest';
import {
  CLASSES,
  NODES,
  SHARED,
  NUISANCES,
  NUMERIC,
  buildTable,
  columnOf,
  decodeTable,
  encodeTable,
  nominalWarmth,
  readSubject,
  rowOf,
  type NumericTest,
  type Subject,
} from '../../src/diagnosis/index.ts';
import { keptSecondTable } from '../../src/diagnosis/kept-second-table.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { applyFaults, secondTraining, training } from '../../src/engine/index.ts';
import { numeric } from './made.ts';

const table = decodeTable(keptTable);
const second = decodeTable(keptSecondTable);
const place = (name: string, circuit?: string): number =>
  CLASSES.findIndex((one) => one.name === name && one.circuit === circuit);

test('it has a row for each class and node, and none for what is not listed', () => {
  CLASSES.forEach(({ name }, i) => {
    const rows = table[i]?.length;
    if (name === 'unlisted') expect(rows).toBe(0);
    else expect(rows).toBe(name === 'healthy' || name === 'turbineSensor' ? 1 : NODES.length);
  });
  // The specification counts 482.
  expect(table.reduce((sum, rows) => sum + rows.length, 0)).toBe(482);
});

test('it comes back from its text, and a text cut short is refused', () => {
  expect(encodeTable(table)).toBe(keptTable);
  expect(() => decodeTable(keptTable.slice(0, 4000))).toThrow(/cut short/);
  // A number that promises another byte (128 and more), and has none.
  expect(() => decodeTable(btoa('\u0080'))).toThrow('The table of the planner is cut short.');
  // Minus one row; more rows than there are severities; rows, and then more.
  expect(() => decodeTable(btoa('\u0001'))).toThrow('This is no table of the planner.');
  expect(() => decodeTable(btoa('\u002c'))).toThrow('This is no table of the planner.');
  expect(() => decodeTable(btoa(`${atob(keptTable)}\u0002`))).toThrow(
    'The table of the planner is too long.',
  );
});

test('it is built a row at a time, and tells how far it has come', { timeout: 60_000 }, () => {
  const { done, value } = buildTable(training).next();
  expect(done).toBe(false);
  // The first of the 482 rows that the specification counts.
  expect(value).toBeCloseTo(1 / 482, 12);
});

// Section 4: the mean is the nominal reading and the bends, the spread that is left the root of twice their squares.
test('a cell, by its definition', { timeout: 60_000 }, () => {
  const nominal: Subject = { plant: training, fluid: training.fluid, warmth: nominalWarmth };
  const row = rowOf(training, { name: 'transferSeal' }, 0.6);
  const read = (subject: Subject, one: NumericTest): number =>
    readSubject(
      { ...subject, plant: applyFaults(subject.plant, { transferSeal: { severity: 0.6 } }) },
      one,
    );
  for (const id of ['coolerFlow.park.700.hot', 'stopTime.drive.hot', 'clutch.forward.1500.cold']) {
    const one = numeric(id);
    const cell = row[columnOf(id)];
    const at = read(nominal, one);
    const each = NUISANCES.map(({ half, move }) => {
      const [up, down] = [1, -1].map((way) =>
        read(move(nominal, (way * half) / Math.sqrt(3)), one),
      ) as [number, number];
      return { move: (up - down) / 2, bend: (up + down) / 2 - at };
    });
    const bends = each.map(({ bend }) => bend);
    expect(cell?.nominal).toBe(at);
    expect(cell?.mean).toBeCloseTo(
      bends.reduce((sum, bend) => sum + bend, at),
      9,
    );
    expect(cell?.curvature).toBeCloseTo(Math.SQRT2 * Math.hypot(...bends), 9);
    expect(cell?.curvature).toBeGreaterThan(0);
    each.forEach(({ move }, i) => expect(cell?.moves[i]).toBeCloseTo(move, 9));
    const gain = id.startsWith('clutch') ? 0.015 * (cell?.mean ?? NaN) : 0;
    expect(cell?.moves[SHARED - 1]).toBeCloseTo(gain, 9);
  }
});

// One severity of each kind of place: whatever the engine changes shows in one of them.
describe.each([
  ['transferSeal', undefined, 0.5],
  ['sealingRings', 'reverse', 0.6],
  ['hardLip', 'forward', 0.8],
  ['pumpWear', undefined, 0.75],
  ['lowFluid', undefined, 0.7],
  ['healthy', undefined, 1],
])('%s %s at %d', (name, circuit, severity) => {
  test.each([
    ['the training transmission', training, table],
    ['the second one', secondTraining, second],
  ])('%s reads as the engine reads now', { timeout: 60_000 }, (_name, plant, keptRows) => {
    const i = place(name, circuit);
    const of = CLASSES[i];
    const rows = keptRows[i] ?? [];
    const kept = rows.length === 1 ? rows[0] : rows[Math.round(severity * 20) - 1];
    if (!of || !kept) throw new Error('no such row');
    rowOf(plant, of, severity).forEach((cell, column) => {
      const test = NUMERIC[column];
      const here = kept[column];
      if (!test || !here) throw new Error('no such column');
      // Half a step of the text, and what another machine's arithmetic may make of it.
      const close = Math.max(
        0.002,
        0.002 * Math.abs(cell.mean),
        test.kind.endsWith('Pressure') ? 0.2 : 0,
      );
      expect(Math.abs(here.mean - cell.mean), test.id).toBeLessThanOrEqual(close + 0.03);
      for (let k = 0; k < SHARED; k += 1) {
        const move = cell.moves[k] ?? 0;
        expect(Math.abs((here.moves[k] ?? 0) - move), `${test.id} ${k}`).toBeLessThanOrEqual(
          close + 0.03,
        );
      }
    });
  });
});
