import { LineChart } from '../../charts/LineChart.tsx';
import { flow } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { SWEEP_RPM, type PumpModel } from './model.ts';
import { seriesOf, X_AXIS } from './series.ts';
import { FILTER } from './sim.ts';
import { words } from './below-words.en.ts';
import { words as common } from './words.en.ts';

const { left } = words;
/** The pump moves 45 L/min at 3000 rpm. */
const FLOW_AXIS = { label: left.y, quantity: flow, min: 0, max: 45 };

export function LeftOver({ model }: { readonly model: PumpModel }) {
  const { now, givens } = model;
  const system = useUnits();
  return (
    <LineChart
      id="who-goes-hungry-left"
      name={left.name}
      takeaway={givens.filter.value > FILTER.min ? left.filter : left.leak}
      xAxis={X_AXIS}
      yAxis={FLOW_AXIS}
      x={SWEEP_RPM}
      series={seriesOf(model, 'leftOver', { hide: false, system })}
      marks={[
        {
          id: 'now',
          kind: 'now',
          x: givens.rpm.value,
          y: now.value.leftOverLmin,
          words: common.line.now,
        },
      ]}
    />
  );
}
