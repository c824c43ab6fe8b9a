import type { StopTrace } from '../../cases/trace.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import { seconds, speed } from '../../quantity/quantities.ts';
import { words } from '../words.en.ts';

/** Turbine speed after the range was selected, as the log has it. */
export function Trace({ id, trace }: { readonly id: string; readonly trace: StopTrace }) {
  const { instrument } = words;
  return (
    <LineChart
      id={`case-${id.replaceAll('.', '-')}`}
      name={instrument.speed}
      takeaway={instrument.traceTakeaway}
      xAxis={{ label: instrument.time, quantity: seconds, min: 0, max: 2.5 }}
      yAxis={{ label: instrument.speed, quantity: speed, min: 0, max: 1000 }}
      x={trace.time}
      series={[{ id: 'turbine', label: instrument.turbine, kind: 'plain', y: trace.turbine }]}
      height="short"
    />
  );
}
