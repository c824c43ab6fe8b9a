import { LineChart } from '../../charts/LineChart.tsx';
import type { Band, Mark, Strip } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { minutes, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { LONGEST, makeModel, TIMES, type WarmUpModel } from './model.ts';
import { demandOf, spoken } from './says.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
const X_AXIS = { label: chart.x, quantity: minutes, min: 0, max: LONGEST };
/** The range fluid is offered in everywhere on the site, from the coldest start to the end of it. */
const Y_AXIS = { label: chart.y, quantity: temperature, min: TEMP.min, max: TEMP.max };

const FILL = { idling: 'plain', gentle: 'plain', pulling: 'filled' } as const;

function bandsOf({ letsGo }: WarmUpModel, system: UnitSystem): readonly Band[] {
  const lets = letsGo.value;
  const { min, max } = Y_AXIS;
  if (lets.kind === 'always') {
    return [{ id: 'holds', kind: 'holds', label: chart.holds, from: min, to: max }];
  }
  if (lets.kind === 'never') {
    return [{ id: 'slips', kind: 'slips', label: chart.slips, from: min, to: max }];
  }
  const label = chart.slipsAbove({ temp: format(lets.tempC, temperature, system) });
  return [
    { id: 'slips', kind: 'slips', label, from: lets.tempC, to: max },
    { id: 'edge', kind: 'needed', label: '', from: lets.tempC, to: lets.tempC },
  ];
}

function takeawayOf(model: WarmUpModel, system: UnitSystem): string {
  const lets = model.letsGo.value;
  const demand = demandOf(model);
  if (lets.kind !== 'at') return chart.takeaway[lets.kind]({ demand });
  return chart.takeaway.at({ demand, temp: format(lets.tempC, temperature, system) });
}

/** Fluid temperature over the drive, with the edge where this crack lets go. The drive as a strip would leave a phone no height for the question. */
function Picture({ model, revealed }: PictureProps<WarmUpModel>) {
  const system = useUnits();
  const { shows, letsGo, stretches, temps, end } = model;
  const found = shows.value;
  const lets = letsGo.value;
  const marks: Mark[] = [];
  if (found.when === 'at' && lets.kind === 'at') {
    marks.push({
      id: 'cross',
      x: found.minute,
      y: lets.tempC,
      words: chart.after({ minutes: spoken(found.minute) }),
    });
  }
  marks.push({
    id: 'end',
    kind: 'now',
    x: end.value.minute,
    y: end.value.tempC,
    words: format(end.value.tempC, temperature, system),
  });
  const strip: Strip = {
    id: 'drive',
    label: chart.drive,
    states: stretches.value.map(({ kind, from, to }) => ({
      from,
      to,
      label: words.kinds[kind],
      kind: FILL[kind],
    })),
  };
  return (
    <LineChart
      id="warm-up-chart"
      name={chart.name}
      takeaway={(s) => takeawayOf(model, s)}
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={TIMES}
      series={[{ id: 'fluid', label: chart.fluid, kind: 'plain', y: temps.value }]}
      bands={bandsOf(model, system)}
      marks={marks}
      strips={revealed ? [strip] : []}
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
