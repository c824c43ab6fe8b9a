import { LineChart } from '../../charts/LineChart.tsx';
import type { Band, Mark } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { pressure, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { COMMANDS, makeModel, SPEED, SWEEP_RPM, type FedFrom, type PumpModel } from './model.ts';
import { seriesOf, X_AXIS } from './series.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { line } = words;
/** A sixth above the command. */
const PRESSURE_AXIS = { label: line.y, quantity: pressure, min: 0, max: 700 };
const BANDS: readonly Band[] = [
  { id: 'clutch', kind: 'needed', label: line.band, from: COMMANDS.clutch, to: COMMANDS.clutch },
];

const fedFromWords = (from: FedFrom, system: UnitSystem): string =>
  from.kind === 'at'
    ? line.fedFrom.at({ speed: format(from.rpm, speed, system) })
    : line.fedFrom[from.kind];

/** A task asks from which speed the pump feeds the line, so that is neither marked nor said then. */
function Picture({ model, stage, revealed, live }: PictureProps<PumpModel>) {
  const { now, fedFrom, givens } = model;
  const system = useUnits();
  const told = revealed && stage !== 'tasks';
  const from = told ? fedFrom.value : null;
  const corner: readonly Mark[] =
    from?.kind === 'at' && from.rpm <= SPEED.max
      ? [
          {
            id: 'fed',
            x: from.rpm,
            y: COMMANDS.line,
            words: (s) => line.corner({ speed: format(from.rpm, speed, s) }),
          },
        ]
      : [];
  return (
    <LineChart
      id="who-goes-hungry-line"
      name={line.name}
      takeaway={(s) => (from ? fedFromWords(from, s) : revealed ? line.inTask : line.cold)}
      xAxis={X_AXIS}
      yAxis={PRESSURE_AXIS}
      x={SWEEP_RPM}
      series={seriesOf(model, 'line', { hide: !revealed, system })}
      bands={BANDS}
      marks={[
        ...corner,
        { id: 'now', kind: 'now', x: givens.rpm.value, y: now.value.lineKpa, words: line.now },
      ]}
      {...gripOf({ live }, sim, 'rpm', givens.rpm)}
    />
  );
}

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
