import { bringRecordings, END, recording, SELECT, type AllRecorded } from '../../car/recordings.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import { printer } from '../../quantity/print.ts';
import { seconds, speed } from '../../quantity/quantities.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { controllerStrip, eventMarks } from '../../simulation/traces/controller.ts';
import { makeModel, type SeesModel } from './model.ts';
import { nameOf } from './print.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
/** Every second reading: a dot on the picture is wider than what lies between. */
const THIN = 2;
const TIME = { label: chart.time, quantity: seconds, min: 0, max: END };
const SLIP = { label: chart.slip, quantity: speed, min: 0, max: 1200 };

const thin = <T,>(all: readonly T[]): readonly T[] => all.filter((_, i) => i % THIN === 0);

/** Before the answer is out neither the checks nor what they led to are marked. */
function Picture({ model, revealed, stage, live }: PictureProps<SeesModel>) {
  const marked = revealed || stage === 'running';
  const { id, slipSeen, events, states } = model.shown.value;
  const { ratioSlipRpm, ratioSlipShare, engagementTime, sample } = model.settings.value;
  const { turbineRpm } = recording(id);
  const slip = thin(slipSeen);
  // As the controller has it: the larger of the limit and a share of turbine speed.
  const limit = slip.map((_, i) =>
    Math.max(ratioSlipRpm, ratioSlipShare * (turbineRpm[i * THIN] ?? 0)),
  );
  const checkAt = SELECT + engagementTime;
  const check = {
    id: 'check',
    x: checkAt,
    y: slipSeen[Math.round(checkAt / sample)] ?? 0,
    words: chart.check,
  };
  // The engine tells every event; what follows from a stored code is one thing, so only its first line is kept.
  const telling = events.filter(
    ({ event }) => event !== 'clutch vented' && event !== 'neutral commanded',
  );
  return (
    <LineChart
      id="controller-sees-slip"
      name={chart.name}
      takeaway={(s) =>
        chart.takeaway({ recording: nameOf(id, s), select: printer(s)(SELECT, seconds) })
      }
      xAxis={TIME}
      yAxis={SLIP}
      x={slip.map((_, i) => i * THIN * sample)}
      series={[
        { id: 'limit', label: chart.limitLine, kind: 'healthy', y: limit },
        { id: 'slip', label: chart.slipLine, kind: 'plain', y: slip },
      ]}
      marks={marked ? [check] : []}
      events={marked ? eventMarks(telling, END) : []}
      height={revealed ? 'tall' : 'normal'}
      strips={marked ? [controllerStrip('controller', chart.controller, states, END)] : []}
      cursor={model.cursor}
      {...gripOf({ live }, sim, 'slipLimit', model.givens.slipLimit, 'y')}
    />
  );
}

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});

/** What was solved when the page was built comes with the island. */
export function View({ recordings }: { readonly recordings: AllRecorded }) {
  bringRecordings(recordings);
  return <Simulation />;
}
