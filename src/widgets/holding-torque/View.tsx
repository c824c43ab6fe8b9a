import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { pressure, torque } from '../../quantity/quantities.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { needed } from '../../simulation/required/control.ts';
import { makeModel, SWEEP, type HoldingModel } from './model.ts';
import { needIn } from './facts.ts';
import { FULL_TORQUE, PRESSURE, sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
const X_AXIS = { label: chart.pressure, quantity: pressure, min: 0, max: PRESSURE.max };
const Y_AXIS = { label: chart.torque, quantity: torque, min: 0, max: FULL_TORQUE };
const BANDS = [
  {
    id: 'needed',
    kind: 'needed',
    label: chart.band(needIn('take-off', 'si')),
    from: needed.idle.torqueNm,
    to: needed['take-off'].torqueNm,
  },
] as const;
/** In the low plot beside a question the whole name would not get past the ring. */
const BANDS_ASKED = [{ ...BANDS[0], label: chart.bandAsked }] as const;

/** Before the answer is out only the way from where the pressure started is drawn. A task asks for the crossing, so it is not marked then. */
function Picture({ model, stage, revealed, live }: PictureProps<HoldingModel>) {
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
    revealed && stage !== 'tasks' && !book && at <= PRESSURE.max
      ? [
          {
            id: 'crossing',
            x: at,
            y: need.value,
            words: (system) => chart.holdsFrom({ pressure: format(at, pressure, system) }),
          },
        ]
      : [];
  const required = givens.required.value;
  return (
    <LineChart
      id="holding-torque-chart"
      name={chart.name}
      takeaway={(system) =>
        book ? chart.forComparison : chart.takeaway[required](needIn(required, system))
      }
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={SWEEP}
      series={[
        ...(own && revealed
          ? [{ id: 'training', label: chart.training, kind: 'healthy', y: trainingLine } as const]
          : []),
        { id: 'held', label: own ? chart.own : chart.training, kind: 'plain', y: shown },
      ]}
      bands={revealed ? BANDS : BANDS_ASKED}
      marks={[...crossing, { id: 'now', kind: 'now', x: kpa, y: has.value, words: chart.now }]}
      {...gripOf({ live }, sim, 'pressure', givens.pressure)}
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
