import { LineChart } from '../../charts/LineChart.tsx';
import type { Band, Mark, Strip } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { minutes, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { asking } from '../clutch-pressure/words.ts';
import { LONGEST, TIMES, type WarmUpModel } from './model.ts';
import { kindWords, spoken } from './words.ts';

const X_AXIS = { label: 'Time', quantity: minutes, min: 0, max: LONGEST };
/** The range fluid is offered in everywhere on the site, from the coldest start to the end of it. */
const Y_AXIS = { label: 'Fluid temperature', quantity: temperature, min: -30, max: 140 };

const FILL = { idling: 'plain', gentle: 'plain', pulling: 'filled' } as const;

function bandsOf({ letsGo }: WarmUpModel, system: UnitSystem): readonly Band[] {
  const lets = letsGo.value;
  const { min, max } = Y_AXIS;
  if (lets.kind === 'always')
    return [{ id: 'holds', kind: 'holds', label: 'holds', from: min, to: max }];
  if (lets.kind === 'never')
    return [{ id: 'slips', kind: 'slips', label: 'slips', from: min, to: max }];
  const at = format(lets.tempC, temperature, system);
  return [
    { id: 'slips', kind: 'slips', label: 'slips', from: lets.tempC, to: max },
    { id: 'edge', kind: 'needed', label: `lets go at ${at}`, from: lets.tempC, to: lets.tempC },
  ];
}

/** Fluid temperature over the drive, with the edge where this crack lets go carried over from the clutch's own simulation. */
export function DriveChart({ model }: { readonly model: WarmUpModel }) {
  const system = useUnits();
  const { shows, letsGo, stretches, temps, givens, end } = model;
  const found = shows.value;
  const lets = letsGo.value;
  const marks: Mark[] = [];
  if (found.when === 'at' && lets.kind === 'at') {
    marks.push({
      id: 'cross',
      x: found.minute,
      y: lets.tempC,
      words: `after ${spoken(found.minute)}`,
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
    label: 'The drive',
    states: stretches.value.map(({ kind, from, to }) => ({
      from,
      to,
      label: kindWords[kind],
      kind: FILL[kind],
    })),
  };
  const edge = lets.kind === 'at' ? `lets go at ${format(lets.tempC, temperature, system)}` : '';
  return (
    <LineChart
      id="warm-up-chart"
      name="Fluid temperature on the drive"
      takeaway={`${asking[givens.required.value]} ${edge === '' ? (lets.kind === 'always' ? 'never lets go with this crack' : 'slips at any temperature') : edge}.`}
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={TIMES}
      series={[{ id: 'fluid', label: 'fluid', kind: 'plain', y: temps.value }]}
      bands={bandsOf(model, system)}
      marks={marks}
      strips={[strip]}
    />
  );
}
