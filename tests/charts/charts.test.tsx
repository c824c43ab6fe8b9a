import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { BudgetBars, shortfall } from '../../src/charts/BudgetBars.tsx';
import { cursorWords } from '../../src/charts/CursorLayer.tsx';
import { HeatMap } from '../../src/charts/HeatMap.tsx';
import type { LineChartProps } from '../../src/charts/line-data.ts';
import { layOutLines } from '../../src/charts/line-layout.ts';
import { LineChart } from '../../src/charts/LineChart.tsx';
import { mapTable } from '../../src/charts/map-layout.ts';
import { flow, length, pressure, temperature } from '../../src/quantity/quantities.ts';

const x = [0, 20, 40, 60, 80, 100];
const chart: LineChartProps = {
  id: 'p',
  name: 'Pressure',
  takeaway: (system) => (system === 'us' ? 'In psi.' : 'In kPa.'),
  xAxis: { label: 'Temperature', quantity: temperature, min: 0, max: 100 },
  yAxis: { label: 'Clutch pressure', quantity: pressure, min: 0, max: 1000 },
  x,
  series: [
    { id: 'a', label: 'cold fluid', kind: 'cold', y: [900, 880, 860, 840, 820, 800] },
    { id: 'b', label: 'hot fluid', kind: 'hot', y: [900, 800, 700, null, 500, 400] },
  ],
  bands: [
    { id: 'n', label: 'needed to hold', kind: 'needed', from: 400, to: 450 },
    { id: 's', label: 'slips', kind: 'slips', from: 0, to: 400 },
  ],
  marks: [{ id: 'm', x: 90, y: 450, words: 'lets go here' }],
  events: [{ x: 20, words: 'Selected' }],
  strips: [
    { id: 'c', label: 'Controller', states: [{ from: 0, to: 60, label: 'waits', kind: 'plain' }] },
  ],
};
const sound = (html: string): void => {
  expect(html).not.toContain('NaN');
  expect(html).not.toContain('Infinity');
  expect(html).not.toContain('undefined');
  expect(html).not.toContain('style=');
};

describe('a line chart on the server', () => {
  const html = render(<LineChart {...chart} />);
  it('is whole, twice the same, and carries no style attribute', () => {
    sound(html);
    expect(render(<LineChart {...chart} />)).toBe(html);
  });
  it('has a name, a takeaway, direct labels, named bands and a numbered event', () => {
    expect(html).toContain('aria-labelledby="p-name"');
    expect(html).toContain('In psi.');
    for (const words of ['needed to hold', 'slips', 'lets go here', 'Controller']) {
      expect(html).toContain(words);
    }
    expect(html).toMatch(/class="end cold"/u);
    expect(html).toMatch(/class="line hot"/u);
  });
  it('has a cursor that keys can reach, and a table', () => {
    expect(html).toMatch(/role="slider" tabindex="0"/u);
    expect(html).toContain('<summary>The numbers</summary>');
  });
});

describe('what the cursor says', () => {
  it('is every value with its unit, gaps, states and events included', () => {
    expect(cursorWords(chart, 1, 'si')).toBe(
      'At 20\u00a0°C: cold fluid 880\u00a0kPa; hot fluid 800\u00a0kPa; Controller waits; Selected.',
    );
    expect(cursorWords(chart, 3, 'us')).toBe(
      'At 140\u00a0°F: cold fluid 122\u00a0psi; hot fluid no value.',
    );
  });
});

describe('layout', () => {
  for (const [width, height, em] of [
    [300, 220, 14],
    [360, 240, 14],
    [1100, 600, 24],
  ] as const) {
    for (const system of ['si', 'us'] as const) {
      it(`keeps all inside a ${width} px box in ${system}, with room for the lines`, () => {
        const layout = layOutLines(chart, { width, height, em }, system);
        expect(layout.frame.right - layout.frame.left).toBeGreaterThan(width * 0.4);
        for (const end of layout.ends) {
          const widest = Math.max(...end.lines.map((line) => line.length * 0.54 * em));
          expect(end.x + widest).toBeLessThanOrEqual(width + 0.5);
        }
        for (const axis of [layout.x, layout.y]) {
          expect(axis.ticks.length).toBeGreaterThanOrEqual(4);
          expect(axis.ticks.length).toBeLessThanOrEqual(6);
        }
      });
    }
  }
  it('puts the same metric value at the same place in both systems', () => {
    const size = { width: 360, height: 240, em: 14 };
    const frameOf = (system: 'si' | 'us') => layOutLines(chart, size, system);
    const share = (system: 'si' | 'us') => {
      const { frame, x: axis } = frameOf(system);
      return (axis.place(37) - frame.left) / (frame.right - frame.left);
    };
    expect(share('us')).toBeCloseTo(share('si'), 9);
  });
  it('leaves a line without values unnamed but keeps its room', () => {
    const hidden = {
      ...chart,
      series: chart.series.map((one) => (one.id === 'b' ? { ...one, y: x.map(() => null) } : one)),
    };
    const size = { width: 360, height: 240, em: 14 };
    expect(layOutLines(hidden, size, 'us').ends.map(({ id }) => id)).toEqual(['a']);
    expect(layOutLines(hidden, size, 'us').frame).toEqual(layOutLines(chart, size, 'us').frame);
  });
  it('names a line that leaves for good where it leaves, and one that comes back at its end', () => {
    const { max } = chart.yAxis;
    const size = { width: 800, height: 400, em: 14 };
    const endsOf = (ys: readonly number[]) => {
      const xs = ys.map((_, i) => chart.xAxis.min + (i * (chart.xAxis.max - chart.xAxis.min)) / 8);
      const series = [{ id: 'a', label: 'up', kind: 'hot', y: ys }] as const;
      const { frame, x: across, ends } = layOutLines({ ...chart, x: xs, series }, size, 'si');
      return { frame, leaves: across.place(xs[3] ?? 0), end: ends[0] };
    };
    const out = [0.1, 0.2, 0.5, 1.2, 1.5, 1.6, 1.6, 1.6, 1.6].map((share) => share * max);
    const left = endsOf(out);
    expect(left.end?.lineY).toBeUndefined();
    expect(Math.abs((left.end?.x ?? 0) - left.leaves)).toBeLessThan(60);
    expect((left.end?.y ?? 0) - left.frame.top).toBeLessThan(60);
    const back = endsOf([...out.slice(0, -1), 0.4 * max]);
    expect(back.end?.x).toBeGreaterThan(back.frame.right);
    // Never in the chart at all: it has left it nowhere.
    const above = endsOf(out.map((value) => value + max));
    expect(above.end?.x).toBeGreaterThan(above.frame.right);
  });
});

describe('a heat map', () => {
  const map = {
    id: 'm',
    name: 'Map',
    takeaway: 'It holds below.',
    xAxis: chart.xAxis,
    yAxis: { label: 'Crack', quantity: length, min: 0, max: 0.3 },
    x: [10, 50, 90],
    y: [0.05, 0.15, 0.25],
    cells: [
      ['holds', 'holds', 'holds'],
      ['holds', 'holds', 'slips'],
      ['holds', 'slips', 'slips'],
    ],
    categories: [
      { id: 'holds', label: 'holds', fill: 'filled' as const },
      { id: 'slips', label: 'slips', fill: 'hatched' as const },
    ],
    now: { x: 50, y: 0.15, words: 'you are here' },
  };
  it('writes its states on their areas and tells them apart without hue', () => {
    const html = render(<HeatMap {...map} />);
    sound(html);
    expect(html).toContain('you are here');
    expect(html).toMatch(/class="cell hatched" fill="url\(#m-sparse\)"/u);
  });
  it('has a table of where each state begins and ends', () => {
    const [, holds, slips] = mapTable(map, 'si').columns;
    expect(holds).toMatchObject({ words: ['0.05 to 0.25', '0.05 to 0.15', '0.05'] });
    expect(slips).toMatchObject({ words: ['nowhere', '0.25', '0.15 to 0.25'] });
  });
});

describe('budget bars', () => {
  const parts = [
    { id: 'a', label: 'clearances', value: 3, fill: 'sparse' as const },
    { id: 'b', label: 'leak', value: 7, fill: 'full' as const },
  ];
  const bars = (value: number) =>
    render(
      <BudgetBars
        id="b"
        name="Budget"
        takeaway="All told."
        quantity={flow}
        supply={{ label: 'Pump', value }}
        parts={parts}
        max={20}
      />,
    );
  it('add up, or say by how much they do not', () => {
    sound(bars(10));
    expect(bars(10)).not.toContain('miss the whole');
    expect(bars(12)).toContain('The parts miss the whole by 0.528\u00a0gpm.');
    expect(shortfall(10, parts)).toBe(0);
  });
  it('survive an empty pump', () => sound(bars(0)));
});
