import { type Plant, training } from '../../engine/index.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { Band, Mark } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { pressure, temperature } from '../../quantity/quantities.ts';
import type { PressureModel } from './model.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import type { PictureContext } from '../../simulation/sim-spec.ts';
import type { Required } from '../../simulation/choices/required.ts';
import { needed, takeOff } from './needed.ts';
import { SWEEP_TEMPS, TEMP } from './ranges.ts';
import { sim } from './sim.ts';
import { asking } from './words.ts';

interface PressureChartProps extends Pick<PictureContext, 'live'> {
  readonly model: PressureModel;
  /** Before the answer is out the line is drawn as far as the run has come, and nothing is marked ahead of it. */
  readonly revealed: boolean;
}

const X_AXIS = { label: 'Fluid temperature', quantity: temperature, min: TEMP.min, max: TEMP.max };
/**
 * A tenth above the clutch command. No slider moves it. The two commands are two tests with two
 * gauges: on one common axis the three lines of the idle test would lie within a finger's width on a phone.
 */
const HEADROOM = 1.125;
const yAxis = (point: keyof Plant['testPoints']) => ({
  label: 'Clutch pressure',
  quantity: pressure,
  min: 0,
  max: (training.testPoints[point].clutch / 1e3) * HEADROOM,
});
const yAxisFor = { idle: yAxis('idle'), load: yAxis('load') };

const line = (id: string, label: string, at: number): Band => ({
  id,
  kind: 'needed',
  label,
  from: at,
  to: at,
});
const band = (label: string): Band => ({
  id: 'take-off',
  kind: 'needed',
  label,
  from: takeOff.gentle.pressure,
  to: takeOff.firm.pressure,
});
const standing = line('idle', 'needed to stand in gear', needed.idle.pressure);
/** The line that the clutch is judged by is drawn and named; the take-off band says how far others lie from it. */
const bandsFor: Readonly<Record<Required, readonly Band[]>> = {
  idle: [band('needed to take off'), standing],
  'take-off': [
    band('gentle to firm'),
    line('judged', 'needed to take off', needed['take-off'].pressure),
    standing,
  ],
};

export function PressureChart({ model, revealed, live }: PressureChartProps) {
  const { givens, now, need, letsGo, cracked, healthy } = model;
  const temp = givens.temp.value;
  const needs = need.value.pressure;
  const edge = letsGo.value;
  const all = cracked.value;
  const soFar = revealed ? all : all.map((kpa, i) => ((SWEEP_TEMPS[i] ?? 0) <= temp ? kpa : null));
  const crossing: readonly Mark[] =
    revealed && edge.kind === 'at'
      ? [
          {
            id: 'crossing',
            x: edge.tempC,
            y: needs,
            words: (system) => `lets go at ${format(edge.tempC, temperature, system)}`,
          },
        ]
      : [];
  return (
    <LineChart
      id="clutch-pressure-chart"
      name="Clutch pressure"
      takeaway={(system) =>
        `${asking[givens.required.value]} needs ${format(needs, pressure, system)}.`
      }
      xAxis={X_AXIS}
      yAxis={yAxisFor[givens.point.value]}
      x={SWEEP_TEMPS}
      series={[
        { id: 'healthy', label: 'no crack', kind: 'healthy', y: healthy.value },
        { id: 'cracked', label: 'this crack', kind: 'plain', y: soFar },
      ]}
      bands={bandsFor[givens.required.value]}
      marks={[...crossing, { id: 'now', kind: 'now', x: temp, y: now.value.clutch, words: 'now' }]}
      {...gripOf({ live }, sim, 'temp', givens.temp)}
    />
  );
}
