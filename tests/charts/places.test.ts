import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellEdges, deepestCell, runsOf } from '../../src/charts/grid.ts';
import { moveIndex } from '../../src/charts/move-index.ts';
import { bandPath, linePath, round } from '../../src/charts/path.ts';
import { along, leastCovered } from '../../src/charts/place-boxes.ts';
import { placeLabels } from '../../src/charts/place-labels.ts';
import { textWidth, wrap } from '../../src/charts/wrap.ts';

const same = (v: number): number => v;

describe('labels at line ends', () => {
  const boxes = fc.array(
    fc.record({
      at: fc.double({ min: 0, max: 300, noNaN: true }),
      height: fc.double({ min: 8, max: 30, noNaN: true }),
    }),
    { maxLength: 8 },
  );
  it('never overlap, keep the order of their lines, and stay inside', () => {
    fc.assert(
      fc.property(boxes, (all) => {
        const middles = placeLabels(all, 0, 300);
        const sorted = all
          .map((box, i) => ({ ...box, middle: middles[i] ?? 0 }))
          .sort((a, b) => a.middle - b.middle);
        sorted.forEach((box, i) => {
          expect(box.middle - box.height / 2).toBeGreaterThan(-1e-6);
          expect(box.middle + box.height / 2).toBeLessThan(300 + 1e-6);
          const next = sorted[i + 1];
          if (!next) return;
          expect(box.at).toBeLessThanOrEqual(next.at);
          expect(next.middle - next.height / 2 - (box.middle + box.height / 2)).toBeGreaterThan(
            -1e-6,
          );
        });
      }),
    );
  });
  it('stay where they are when there is room, and part evenly when there is not', () => {
    expect(
      placeLabels(
        [
          { at: 50, height: 20 },
          { at: 150, height: 20 },
        ],
        0,
        300,
      ),
    ).toEqual([50, 150]);
    expect(
      placeLabels(
        [
          { at: 100, height: 20 },
          { at: 100, height: 20 },
        ],
        0,
        300,
      ),
    ).toEqual([90, 110]);
  });
});

describe('paths', () => {
  it('round to a tenth, break at gaps, and never print NaN', () => {
    expect(linePath([0, 1, 2, 3], [0.04, 1.26, null, 2], same, same)).toBe('M0 0L1 1.3M3 2');
    expect(linePath([0, 1], [Number.NaN, Number.POSITIVE_INFINITY], same, same)).toBe('');
    expect(Object.is(round(-0.01), 0)).toBe(true);
  });
  it('run a band up one side and down the other', () => {
    expect(bandPath([0, 1], [0, 0], [2, 3], same, same)).toBe('M0 2L1 3L1 0L0 0Z');
    expect(bandPath([0], [0], [2], same, same)).toBe('');
  });
});

describe('a map', () => {
  const cells = [
    ['h', 'h', 's'],
    ['h', 's', 's'],
  ];
  it('joins neighbours in a row and loses no cell', () => {
    expect(runsOf(cells, 'h')).toEqual([
      { row: 0, from: 0, to: 2 },
      { row: 1, from: 0, to: 1 },
    ]);
    expect(cellEdges([1, 3, 5], 0, 6)).toEqual([0, 2, 4, 6]);
  });
  it('finds the deepest cell of an area, for its name', () => {
    const big = Array.from({ length: 9 }, (_, r) =>
      Array.from({ length: 9 }, (_unused, c) => (r < 5 && c < 5 ? 'in' : 'out')),
    );
    expect(deepestCell(big, 'in')).toMatchObject({ row: 2, column: 2 });
    expect(deepestCell(big, 'none')).toBeNull();
  });
});

it('a name goes where it covers least, the first of equals', () => {
  const frame = { x: 0, y: 0, width: 100, height: 100 };
  const at = (x: number, y: number) => ({ x, y, width: 20, height: 10 });
  expect(leastCovered([at(0, 0), at(50, 50)], [], frame)).toBe(0);
  expect(leastCovered([at(0, 0), at(50, 50)], [at(5, 5)], frame)).toBe(1);
  expect(leastCovered([at(95, 0), at(50, 50)], [at(50, 50)], frame)).toBe(1);
});

it('a name goes where no tie of it crosses another name', () => {
  const frame = { x: 0, y: 0, width: 100, height: 100 };
  const name = { x: 40, y: 40, width: 20, height: 10, weight: 100 };
  // The mark is at 50, 20; from below the name its tie would run through it.
  const below = { x: 40, y: 60, width: 20, height: 10 };
  const beside = { x: 70, y: 20, width: 20, height: 10 };
  const tieOf = ({ x, y }: typeof below) =>
    x === below.x ? along(50, y, 50, 20, 1) : along(x, 25, 50, 20, 1);
  expect(leastCovered([below, beside], [name], frame, tieOf)).toBe(1);
  expect(leastCovered([below, beside], [], frame, tieOf)).toBe(0);
});

it('nothing passes between the boxes along a line', () => {
  fc.assert(
    fc.property(
      fc.tuple(...Array.from({ length: 4 }, () => fc.integer({ min: -200, max: 200 }))),
      fc.double({ min: 0, max: 1, noNaN: true }),
      ([x1, y1, x2, y2], share) => {
        const boxes = along(x1 ?? 0, y1 ?? 0, x2 ?? 0, y2 ?? 0, 2);
        const at = (from = 0, to = 0) => from + (to - from) * share;
        const inside = boxes.some(
          ({ x, y, width, height }) =>
            at(x1, x2) >= x - 1e-9 &&
            at(x1, x2) <= x + width + 1e-9 &&
            at(y1, y2) >= y - 1e-9 &&
            at(y1, y2) <= y + height + 1e-9,
        );
        expect(inside).toBe(true);
      },
    ),
  );
});

it('keys move a cursor and stop at the ends', () => {
  expect(moveIndex('ArrowRight', null, 10)).toBe(0);
  expect(moveIndex('ArrowLeft', null, 10)).toBe(9);
  expect(moveIndex('ArrowRight', 9, 10)).toBe(9);
  expect(moveIndex('PageUp', 3, 100)).toBe(13);
  expect(moveIndex('End', 3, 100)).toBe(99);
  expect(moveIndex('a', 3, 100)).toBeNull();
});

it('words wrap within their width and keep no-break spaces', () => {
  const lines = wrap('left over for converter and lubrication 16.7\u00a0L/min', 120, 14);
  expect(lines.join(' ')).toBe('left over for converter and lubrication 16.7\u00a0L/min');
  for (const line of lines) expect(textWidth(line, 14)).toBeLessThanOrEqual(120);
});
