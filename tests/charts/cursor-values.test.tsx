// Where a value stands at the cursor: on no other line, which it would be taken for.
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { CursorLayer } from '../../src/charts/CursorLayer.tsx';
import type { LineChartProps } from '../../src/charts/line-data.ts';
import { layOutLines } from '../../src/charts/line-layout.ts';
import { along } from '../../src/charts/place-boxes.ts';
import { seconds, speed } from '../../src/quantity/quantities.ts';

/** A turbine that falls to a stop while the output shaft stands, as read from a log. */
const x = Array.from({ length: 171 }, (_, i) => -0.5 + i / 20);
const turbine = x.map((at) => (at < 0.3 ? 700 : Math.max(0, 700 - 1000 * (at - 0.3))));
const chart: LineChartProps = {
  id: 'p',
  name: 'Place',
  takeaway: 'Here.',
  xAxis: { label: 'Time', quantity: seconds, min: -0.5, max: 8 },
  yAxis: { label: 'Speed', quantity: speed, min: 0, max: 800 },
  x,
  series: [
    { id: 'turbine', kind: 'plain', label: 'turbine', y: turbine },
    { id: 'output', kind: 'healthy', label: 'output', y: x.map(() => 4) },
  ],
};

describe.each([
  [350, 260, 14],
  [760, 260, 14],
  [1100, 420, 16],
])('in a box of %i by %i', (width, height, em) => {
  const layout = layOutLines(chart, { width, height, em }, 'us');
  it.each([0.7, 0.8, 0.9, 1])('at %f s the output’s value is off the turbine’s line', (at) => {
    const html = render(<CursorLayer chart={chart} layout={layout} at={at} em={em} system="us" />);
    const [, left = '', base = ''] =
      /cursor-value" text-anchor="middle" x="([\d.]+)" y="([\d.]+)">4\s/u.exec(html) ?? [];
    const half = (5 * 0.54 * em) / 2;
    const [middle, line] = [Number(left), Number(base) - em * 0.35];
    const covered = x.flatMap((here, n) =>
      n === 0
        ? []
        : along(
            layout.x.place(x[n - 1] ?? 0),
            layout.y.place(turbine[n - 1] ?? 0),
            layout.x.place(here),
            layout.y.place(turbine[n] ?? 0),
            1,
          ).filter(
            (box) => Math.abs(box.x + 1 - middle) < half && Math.abs(box.y + 1 - line) < em * 0.4,
          ),
    );
    expect(left).not.toBe('');
    expect(covered).toEqual([]);
  });
});
