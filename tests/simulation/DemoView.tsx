import { format } from '../../src/quantity/print.ts';
import { useMemo } from 'preact/hooks';
import { BudgetBars } from '../../src/charts/BudgetBars.tsx';
import { HeatMap } from '../../src/charts/HeatMap.tsx';
import { doubt } from '../../src/charts/doubt.tsx';
import { LineChart } from '../../src/charts/LineChart.tsx';
import {
  flow,
  length,
  pressure,
  seconds,
  speed,
  temperature,
} from '../../src/quantity/quantities.ts';
import { SimShell } from '../../src/simulation/SimShell.tsx';
import { demo, makeDemo, NEEDED, type DemoModel } from './demo.tsx';

const TEMPS = Array.from({ length: 41 }, (_, i) => -20 + i * 4);
const CRACKS = Array.from({ length: 26 }, (_, i) => i * 0.02);
const TEMP_AXIS = { label: 'Temperature', quantity: temperature, min: -20, max: 140 };

export function DemoView() {
  const model = useMemo(makeDemo, []);
  return (
    <SimShell
      sim={demo}
      tasks={() => Promise.resolve(demo)}
      model={model}
      picture={({ revealed }) => <LoadChart model={model} revealed={revealed} />}
      below={() => (
        <>
          <LoadMap model={model} />
          <Budget model={model} />
          <Trace />
        </>
      )}
    />
  );
}

function LoadChart({ model, revealed }: { readonly model: DemoModel; readonly revealed: boolean }) {
  const { givens, load, loadAt } = model;
  const crack = givens.crack.value;
  const sound = TEMPS.map(() => givens.push.value);
  const cracked = TEMPS.map((t) => (revealed || t <= givens.temp.value ? loadAt(t, crack) : null));
  const crossing = TEMPS.find((t) => loadAt(t, crack) < NEEDED);
  return (
    <LineChart
      id="demo-load"
      name="Load against temperature"
      takeaway={(system) =>
        crossing === undefined || !revealed
          ? 'What is left of the push.'
          : `It holds up to ${format(crossing, temperature, system)}.`
      }
      xAxis={TEMP_AXIS}
      yAxis={{ label: 'Load', quantity: pressure, min: 0, max: 1000 }}
      x={TEMPS}
      series={[
        { id: 'sound', label: 'no crack', kind: 'healthy', y: sound },
        {
          id: 'cracked',
          label: 'with crack',
          kind: 'hot',
          y: cracked,
        },
        {
          id: 'half',
          label: 'half the crack',
          kind: 'cold',
          y: TEMPS.map((t) => (revealed ? loadAt(t, crack / 2) : null)),
        },
      ]}
      {...(revealed && {
        under: doubt({
          x: TEMPS,
          low: TEMPS.map((t) => loadAt(t, crack * 1.08)),
          high: TEMPS.map((t) => loadAt(t, crack * 0.92)),
          kind: 'hot',
        }),
      })}
      bands={[
        { id: 'slips', label: 'slips', kind: 'slips', from: 0, to: NEEDED - 40 },
        { id: 'needed', label: 'needed to hold', kind: 'needed', from: NEEDED - 40, to: NEEDED },
      ]}
      marks={[
        { id: 'now', x: givens.temp.value, y: load.value, kind: 'now', words: 'now' },
        ...(crossing !== undefined && revealed
          ? [
              {
                id: 'cross',
                x: crossing,
                y: NEEDED,
                words: (s: 'si' | 'us') => `lets go at ${format(crossing, temperature, s)}`,
              },
            ]
          : []),
      ]}
    />
  );
}

function LoadMap({ model }: { readonly model: DemoModel }) {
  const { givens, loadAt } = model;
  return (
    <HeatMap
      id="demo-map"
      name="Where it holds"
      takeaway="Narrow and cool holds, wide and hot slips."
      xAxis={TEMP_AXIS}
      yAxis={{ label: 'Crack', quantity: length, min: 0, max: 0.5 }}
      x={TEMPS}
      y={CRACKS}
      cells={CRACKS.map((c) => TEMPS.map((t) => (loadAt(t, c) >= NEEDED ? 'holds' : 'slips')))}
      categories={[
        { id: 'holds', label: 'holds', fill: 'filled' },
        { id: 'slips', label: 'slips', fill: 'hatched' },
      ]}
      contour={TEMPS.slice(1).map(
        (t) =>
          [t, Math.min(0.5, Math.sqrt((givens.push.value - NEEDED) / ((t + 40) * 40)))] as const,
      )}
      now={{ x: givens.temp.value, y: givens.crack.value, words: 'you are here' }}
      onPick={(temp, crack) => model.apply({ temp, crack })}
    />
  );
}

function Budget({ model }: { readonly model: DemoModel }) {
  const leak = Math.min(12, model.givens.crack.value * 40);
  return (
    <BudgetBars
      id="demo-budget"
      name="Where the flow goes"
      takeaway={(s) => `The crack takes ${format(leak, flow, s)} of ${format(20, flow, s)}.`}
      quantity={flow}
      supply={{ label: 'Pump gives', value: 20 }}
      parts={[
        { id: 'clear', label: 'clearances', value: 3, fill: 'sparse' },
        { id: 'rings', label: 'rings', value: 0.3, fill: 'dense' },
        { id: 'leak', label: 'the crack', value: leak, fill: 'full' },
        {
          id: 'left',
          label: 'left over for converter and lubrication',
          value: 16.7 - leak,
          fill: 'open',
        },
      ]}
      max={25}
    />
  );
}

const TIMES = Array.from({ length: 141 }, (_, i) => i * 0.05);

function Trace() {
  return (
    <LineChart
      id="demo-trace"
      name="Two speeds"
      takeaway="Made-up traces, to look at."
      xAxis={{ label: 'Time', quantity: seconds, min: 0, max: 7 }}
      yAxis={{ label: 'Speed', quantity: speed, min: 0, max: 1500 }}
      x={TIMES}
      series={[
        {
          id: 'c',
          label: 'cold',
          kind: 'cold',
          y: TIMES.map((t) => (t < 0.5 ? 700 : Math.max(0, 700 - (t - 0.5) * 900))),
        },
        {
          id: 'h',
          label: 'hot',
          kind: 'hot',
          y: TIMES.map((t) => (t < 0.5 ? 700 : Math.max(80, 700 - (t - 0.5) * 300))),
        },
      ]}
      events={[
        { x: 0.5, words: 'Drive selected.' },
        { x: 0.8, words: 'Pressure raised once.' },
        { x: 2.5, words: 'Code stored.' },
      ]}
      strips={[
        {
          id: 'controller',
          label: 'Controller',
          states: [
            { from: 0, to: 0.5, label: 'waits', kind: 'plain' },
            { from: 0.5, to: 2.5, label: 'watches slip', kind: 'hatched' },
            { from: 2.5, to: 7, label: 'fail-safe', kind: 'filled' },
          ],
        },
      ]}
    />
  );
}
