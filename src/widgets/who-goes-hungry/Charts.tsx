import { LineChart } from '../../charts/LineChart.tsx';
import type { Band, Mark, Series } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { flow, pressure, speed, temperature } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { COMMANDS, type HungryModel } from './model.ts';
import { COLD_C, SPEED, SWEEP_RPM } from './ranges.ts';
import { fedFromWords } from './words.ts';

const X_AXIS = { label: 'Engine speed', quantity: speed, min: SPEED.min, max: SPEED.max };
/** A sixth above the command. */
const PRESSURE_AXIS = { label: 'Line pressure', quantity: pressure, min: 0, max: 700 };
/** The pump moves 45 L/min at 3000 rpm. */
const FLOW_AXIS = { label: 'Left over', quantity: flow, min: 0, max: 45 };
const BANDS: readonly Band[] = [
  {
    id: 'clutch',
    kind: 'needed',
    label: 'clutch command',
    from: COMMANDS.clutch,
    to: COMMANDS.clutch,
  },
];

/** Cold dashed beside the temperature chosen; one line alone where that is the cold one itself. */
function useSeries(
  model: HungryModel,
  which: 'line' | 'leftOver',
  hide: boolean,
): readonly Series[] {
  const system = useUnits();
  const temp = model.givens.temp.value;
  const name = (tempC: number): string => format(tempC, temperature, system);
  const cold: Series = {
    id: 'cold',
    label: name(COLD_C),
    kind: 'cold',
    y: model.coldSweep.value[which],
  };
  if (hide || temp === COLD_C) return [cold];
  // Colder than the cold line is cold too, but only one line can be the dashed one.
  const kind = temp > COLD_C ? 'hot' : 'plain';
  return [cold, { id: 'now', label: name(temp), kind, y: model.sweep.value[which] }];
}

interface ChartProps {
  readonly model: HungryModel;
}

export function LineFigure({ model, revealed }: ChartProps & { readonly revealed: boolean }) {
  const { now, fedFrom, givens } = model;
  const series = useSeries(model, 'line', !revealed);
  const from = fedFrom.value;
  const corner: readonly Mark[] =
    revealed && from.kind === 'at' && from.rpm <= SPEED.max
      ? [
          {
            id: 'fed',
            x: from.rpm,
            y: COMMANDS.line,
            words: (system) => `fed from ${format(from.rpm, speed, system)}`,
          },
        ]
      : [];
  return (
    <LineChart
      id="who-goes-hungry-line"
      name="Line pressure against engine speed"
      takeaway={(system) =>
        revealed ? fedFromWords(from, system) : 'Cold, the line has its command at every speed.'
      }
      xAxis={X_AXIS}
      yAxis={PRESSURE_AXIS}
      x={SWEEP_RPM}
      series={series}
      bands={BANDS}
      marks={[
        ...corner,
        { id: 'now', kind: 'now', x: givens.rpm.value, y: now.value.line, words: 'now' },
      ]}
    />
  );
}

export function LeftOverFigure({ model }: ChartProps) {
  const { now, givens } = model;
  const series = useSeries(model, 'leftOver', false);
  return (
    <LineChart
      id="who-goes-hungry-left"
      name="Left for converter, cooler and lubrication"
      takeaway={
        givens.filter.value > 1
          ? 'A leak takes its part hot and slow. A clogged filter cuts the cold line off flat: faster brings no more.'
          : 'A leak takes its part hot and slow; with speed there is always more.'
      }
      xAxis={X_AXIS}
      yAxis={FLOW_AXIS}
      x={SWEEP_RPM}
      series={series}
      marks={[
        { id: 'now', kind: 'now', x: givens.rpm.value, y: now.value.flows.leftOver, words: 'now' },
      ]}
    />
  );
}
