import type { JSX } from 'preact';
import { BudgetBars } from '../charts/BudgetBars.tsx';
import { LineChart } from '../charts/LineChart.tsx';
import { flow, pressure, seconds, temperature } from '../quantity/quantities.ts';

/** One chart with made-up lines that bring it to an edge of what it can do. */
interface Charted {
  readonly id: string;
  readonly draw: (id: string) => JSX.Element;
}

const TEMPS = Array.from({ length: 25 }, (_, i) => i * 5);
const TIMES = Array.from({ length: 61 }, (_, i) => i / 10);
const TEMP_AXIS = { label: 'Fluid temperature', quantity: temperature, min: 0, max: 120 };
const TIME_AXIS = { label: 'Time', quantity: seconds, min: 0, max: 6 };
const kPa = (max: number) => ({ label: 'Clutch pressure', quantity: pressure, min: 0, max });

/** The edges at which a chart has gone wrong before: names close together, lines that leave, nothing to show. */
const charts: readonly Charted[] = [
  {
    id: 'line-names-close',
    draw: (id) => (
      <LineChart
        id={id}
        name="Two lines that end together"
        takeaway="Both end within a pixel of each other, and each keeps its name."
        xAxis={TEMP_AXIS}
        yAxis={kPa(500)}
        x={TEMPS}
        series={[
          { id: 'cold', label: 'cold', kind: 'cold', y: TEMPS.map((t) => 400 - t) },
          { id: 'hot', label: 'hot', kind: 'hot', y: TEMPS.map((t) => 404 - t) },
        ]}
        bands={[{ id: 'need', label: 'needed', kind: 'needed', from: 240, to: 300 }]}
        marks={[
          { id: 'now', x: 100, y: 300, kind: 'now', words: 'now' },
          { id: 'edge', x: 98, y: 300, kind: 'crossing', words: 'lets go here' },
        ]}
      />
    ),
  },
  {
    id: 'line-leaves',
    draw: (id) => (
      <LineChart
        id={id}
        name="A line that leaves the chart"
        takeaway="It is named where it leaves."
        xAxis={TEMP_AXIS}
        yAxis={kPa(300)}
        x={TEMPS}
        series={[
          { id: 'up', label: 'leaves above', kind: 'plain', y: TEMPS.map((t) => 100 + t * 5) },
          {
            id: 'gap',
            label: 'has a gap',
            kind: 'healthy',
            y: TEMPS.map((t) => (t > 40 && t < 70 ? null : 80)),
          },
        ]}
      />
    ),
  },
  {
    id: 'line-events',
    draw: (id) => (
      <LineChart
        id={id}
        name="States and events along time"
        takeaway="Events are numbered on the axis, and the states stand in a strip."
        xAxis={TIME_AXIS}
        yAxis={kPa(500)}
        x={TIMES}
        series={[
          { id: 'p', label: 'pressure', kind: 'hot', y: TIMES.map((t) => Math.min(400, t * 200)) },
        ]}
        events={[
          { x: 0.5, words: 'Drive selected' },
          { x: 0.7, words: 'filling begins' },
          { x: 2, words: 'the turbine stops' },
        ]}
        strips={[
          {
            id: 'controller',
            label: 'Controller',
            states: [
              { from: 0, to: 2, label: 'waits', kind: 'plain' },
              { from: 2, to: 4, label: 'watches', kind: 'filled' },
              { from: 4, to: 6, label: 'gave up', kind: 'hatched' },
            ],
          },
        ]}
      />
    ),
  },
  {
    id: 'line-log',
    draw: (id) => (
      <LineChart
        id={id}
        name="A log axis"
        takeaway="From a drop to a stream."
        xAxis={TEMP_AXIS}
        yAxis={{ label: 'Leak', quantity: flow, min: 0.001, max: 50, scale: 'log' }}
        x={TEMPS}
        series={[
          { id: 'l', label: 'leak', kind: 'plain', y: TEMPS.map((t) => 2 ** (t / 10) / 100) },
        ]}
      />
    ),
  },
  {
    id: 'line-empty',
    draw: (id) => (
      <LineChart
        id={id}
        name="Nothing drawn yet"
        takeaway="No line is drawn, and no name floats."
        xAxis={TEMP_AXIS}
        yAxis={kPa(300)}
        x={TEMPS}
        series={[{ id: 'none', label: 'not yet', kind: 'plain', y: TEMPS.map(() => null) }]}
      />
    ),
  },
  {
    id: 'budget',
    draw: (id) => (
      <BudgetBars
        id={id}
        name="Where the flow goes"
        takeaway="A sliver and a large part, both named."
        quantity={flow}
        supply={{ label: 'pump', value: 12 }}
        parts={[
          { id: 'a', label: 'slip', value: 2, fill: 'dense' },
          { id: 'b', label: 'bleed', value: 0.1, fill: 'sparse' },
          { id: 'c', label: 'crack', value: 4.9, fill: 'full' },
          { id: 'd', label: 'left over', value: 5, fill: 'open' },
        ]}
        max={14}
      />
    ),
  },
];

export const chartIds = charts.map(({ id }) => id);

/** One of them by its id. */
export const ShownChart = ({ of }: { readonly of: string }): JSX.Element | undefined =>
  charts.find(({ id }) => id === of)?.draw(of);
