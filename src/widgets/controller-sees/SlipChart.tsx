import { words as stateWords } from '../../car/states/words.en.ts';
import type { Signal } from '@preact/signals';
import { LineChart } from '../../charts/LineChart.tsx';
import type { EventMark, Mark, Strip } from '../../charts/line-data.ts';
import { seconds, speed } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { Judged, SeesModel } from './model.ts';
import { END, recording, SELECT } from '../../car/recordings.ts';
import { names, worthTelling } from './words.ts';

/** Every second reading: a dot on the picture is wider than what lies between. */
const THIN = 2;
const TIME = { label: 'Time', quantity: seconds, min: 0, max: END };
const SLIP = { label: 'Slip, as seen', quantity: speed, min: 0, max: 1200 };

const thin = <T,>(all: readonly T[]): readonly T[] => all.filter((_, i) => i % THIN === 0);

const told = ({ events }: Judged): readonly EventMark[] =>
  events.filter(worthTelling).map(({ time, event, code }) => ({
    x: time,
    words: code === undefined ? event : `${event}: ${code}`,
  }));

const strip = ({ states }: Judged): Strip => ({
  id: 'controller',
  label: 'Controller',
  states: states.map(({ time, state }, i) => ({
    from: time,
    to: states[i + 1]?.time ?? END,
    label: stateWords[state],
    kind: state.startsWith('failSafe')
      ? 'hatched'
      : state === 'pressureRaised'
        ? 'filled'
        : 'plain',
  })),
});

interface SlipChartProps {
  readonly model: SeesModel;
  /** Before the answer is out neither the checks nor what they led to are marked. */
  readonly revealed: boolean;
  readonly cursor: Signal<number | null>;
}

export function SlipChart({ model, revealed, cursor }: SlipChartProps) {
  const system = useUnits();
  const shown = model.shown.value;
  const { settings } = model;
  const { ratioSlipRpm, ratioSlipShare, engagementTime, sample } = settings.value;
  const { turbineRpm } = recording(shown.id);
  const slip = thin(shown.slipSeen);
  // As the controller has it: the larger of the limit and a share of turbine speed.
  const limit = slip.map((_, i) =>
    Math.max(ratioSlipRpm, ratioSlipShare * (turbineRpm[i * THIN] ?? 0)),
  );
  const checkAt = SELECT + engagementTime;
  const checked: Mark = {
    id: 'check',
    x: checkAt,
    y: shown.slipSeen[Math.round(checkAt / sample)] ?? 0,
    words: 'engagement check looks here',
  };
  return (
    <LineChart
      id="controller-sees-slip"
      name="Slip as the controller sees it"
      takeaway={`${names[shown.id](system)}. Drive selected at 0.5 s. The recording goes on as it was, whatever the controller decides.`}
      xAxis={TIME}
      yAxis={SLIP}
      x={slip.map((_, i) => i * THIN * sample)}
      series={[
        { id: 'limit', label: 'limit', kind: 'healthy', y: limit },
        { id: 'slip', label: 'slip', kind: 'plain', y: slip },
      ]}
      marks={revealed ? [checked] : []}
      events={revealed ? told(shown) : []}
      strips={revealed ? [strip(shown)] : []}
      cursor={cursor}
    />
  );
}
