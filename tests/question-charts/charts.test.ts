import { describe, expect, test } from 'vitest';
import { questionBank } from '../../src/lessons/question-bank.ts';
import { chartIds, chartOf } from '../../src/question-charts/index.ts';
import { passageText } from '../../src/quiz/asked.ts';
import type { ChartPicture } from '../../src/quiz/chart-picture.ts';

const chart = (id: string): ChartPicture => {
  const found = chartOf(id);
  if (found === undefined) throw new Error(`no chart "${id}"`);
  return found;
};
const column = ({ rows }: ChartPicture, at: number): readonly number[] =>
  rows.map((row) => Number.parseFloat(passageText(row[at] ?? [], 'si')));

test('every chart is asked for by some question, so that none rots', () => {
  const asked = new Set(questionBank().map((q) => q.chart));
  expect(chartIds.filter((id) => !asked.has(id))).toEqual([]);
});

describe.each(chartIds)('%s', (id) => {
  const { lines, left, right, top, bottom, x, y, about, head, rows } = chart(id);
  test('stays within its frame, with ticks in both unit systems', () => {
    for (const { path } of lines) {
      const places = path
        .slice(1)
        .split(/[ML]/)
        .map((pair) => pair.split(' ').map(Number));
      for (const [across = Number.NaN, up = Number.NaN] of places) {
        expect(across).toBeGreaterThanOrEqual(left - 0.1);
        expect(across).toBeLessThanOrEqual(right + 0.1);
        expect(up).toBeGreaterThanOrEqual(top - 0.1);
        expect(up).toBeLessThanOrEqual(bottom + 0.1);
      }
    }
    for (const { ticks, title } of [x.si, x.us, y.si, y.us]) {
      expect(ticks.length).toBeGreaterThanOrEqual(3);
      expect(title.length).toBeGreaterThan(3);
    }
  });
  test('its letters do not touch, and its table has a column for each line', () => {
    const heights = lines.map((line) => line.y).sort((a, b) => a - b);
    heights.slice(1).forEach((height, i) => expect(height - (heights[i] ?? 0)).toBeGreaterThan(11));
    expect(head).toHaveLength(lines.length + 1);
    for (const row of rows) expect(row).toHaveLength(head.length);
  });
  test('what is said of it gives no answer away', () => {
    expect(passageText(about, 'us')).not.toMatch(
      /split|crack|worn|healthy|fault|slip(s|ping)|low\b|late/i,
    );
  });
});

// Rules of the trade (common practice, no source), which a chart of the engine has to show.
test('a crack fades with heat, a hole hardly, a low command not at all', () => {
  const crack = column(chart('line-and-tap-cracked-seal'), 2);
  const hole = column(chart('line-and-tap-open-port'), 2);
  const command = column(chart('line-low-command'), 1);
  expect((crack.at(-1) ?? 0) / (crack[0] ?? 1)).toBeLessThan(0.6);
  expect((hole.at(-1) ?? 0) / (hole[0] ?? 1)).toBeGreaterThan(0.8);
  expect(new Set(command).size).toBe(1);
});
test('the answers that questions read off a chart lie on it', () => {
  const fluids = chart('two-fluids');
  // Oil A at 60 °C is as thin as oil B at 40 °C, within what an eye can tell.
  expect(column(fluids, 1)[2]).toBeCloseTo(column(fluids, 2)[1] ?? 0, 0);
  const crack = column(chart('line-and-tap-cracked-seal'), 2);
  expect(crack[1]).toBeGreaterThan(260);
  expect(crack[2]).toBeLessThan(260);
  const [idling, gentle, pulling] = [1, 2, 3].map((at) => column(chart('three-drives'), at));
  expect(Math.max(...(idling ?? []))).toBeLessThan(100);
  expect(Math.max(...(gentle ?? []))).toBeLessThan(100);
  expect(pulling?.[1]).toBeGreaterThan(100);
});
