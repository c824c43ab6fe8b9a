import { LineChart } from '../../charts/LineChart.tsx';
import type { Band, Mark } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { pressure, torque } from '../../quantity/quantities.ts';
import { needed } from '../clutch-pressure/needed.ts';
import type { HoldingModel } from './model.ts';
import { FULL_TORQUE, PRESSURE, SWEEP } from './ranges.ts';
import { asking } from './words.ts';

const X_AXIS = { label: 'Clutch pressure', quantity: pressure, min: 0, max: PRESSURE.max };
const Y_AXIS = { label: 'Torque it can hold', quantity: torque, min: 0, max: FULL_TORQUE };
const BANDS: readonly Band[] = [
  {
    id: 'needed',
    kind: 'needed',
    label: 'needed: idle to 1500 rpm',
    from: needed.idle.torque,
    to: needed['take-off'].torque,
  },
];

interface TorqueChartProps {
  readonly model: HoldingModel;
  /** Before the answer is out only the way from where the pressure started is drawn. */
  readonly revealed: boolean;
}

export function TorqueChart({ model, revealed }: TorqueChartProps) {
  const { build, torque: has, need, needPressure, line, trainingLine, givens } = model;
  const kpa = build.value.pressure;
  const at = needPressure.value;
  const shown = revealed
    ? line.value
    : line.value.map((nm, i) => ((SWEEP[i] ?? 0) >= kpa && (SWEEP[i] ?? 0) <= 400 ? nm : null));
  const example = givens.example.value;
  const own = example !== 'training';
  // A book asks for a number, not whether our car drives off.
  const book = own && example !== 'own';
  const crossing: readonly Mark[] =
    revealed && !book && at <= PRESSURE.max
      ? [
          {
            id: 'crossing',
            x: at,
            y: need.value,
            words: (system) => `holds from ${format(at, pressure, system)}`,
          },
        ]
      : [];
  return (
    <LineChart
      id="holding-torque-chart"
      name="Torque held against pressure"
      takeaway={(system) =>
        book
          ? 'the band is what our car needs, for comparison.'
          : `${format(need.value, torque, system)} is needed ${asking[givens.required.value]}.`
      }
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={SWEEP}
      series={[
        ...(own && revealed
          ? [
              {
                id: 'training',
                label: 'training clutch',
                kind: 'healthy',
                y: trainingLine,
              } as const,
            ]
          : []),
        { id: 'held', label: own ? 'this clutch' : 'training clutch', kind: 'plain', y: shown },
      ]}
      bands={BANDS}
      marks={[...crossing, { id: 'now', kind: 'now', x: kpa, y: has.value, words: 'now' }]}
    />
  );
}
