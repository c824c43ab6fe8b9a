import type { Signal } from '@preact/signals';
import { LineChart } from '../../charts/LineChart.tsx';
import type { EventMark, Mark, Strip } from '../../charts/line-data.ts';
import { ControllerStatesDrawing, describeControllerStates } from '../../drawings/index.ts';
import { More } from '../../ui/More.tsx';
import { seconds, speed } from '../../ui/quantity.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { Judged, SeesModel } from './model.ts';
import { parkSpeedWords } from './park-speed.ts';
import { END, recording, SELECT } from './recordings.ts';
import { names, score, stateWords, tripWords, verdictWords, worthTelling } from './words.ts';

/** Every second reading: a dot on the picture is wider than what lies between. */
const THIN = 2;
const TIME = { label: 'Time', quantity: seconds, min: 0, max: END };
const SLIP = { label: 'Slip, as seen', quantity: speed, min: 0, max: 1200 };

const thin = <T,>(all: readonly T[]): readonly T[] => all.filter((_, i) => i % THIN === 0);

const told = ({ events }: Judged): readonly EventMark[] =>
  events.filter(worthTelling).map(({ time, event, reason, code }) => ({
    x: time,
    words: `${code === undefined ? event : `${event}: ${code}`}. ${reason}`,
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

/** Every recording under the same limits. */
export function Score({ model }: { readonly model: SeesModel }) {
  const system = useUnits();
  const { longestOver, slowest } = model.healthyWorst.value;
  return (
    <section class="sees-score" aria-labelledby="controller-sees-score">
      <h4 id="controller-sees-score">All eight recordings under these limits</h4>
      <div class="table-scroll" role="region" tabIndex={0} aria-label="All eight recordings">
        <table>
          <thead>
            <tr>
              <th scope="col">Recording</th>
              <th scope="col">First failed check, after selection</th>
              <th scope="col">Verdict</th>
            </tr>
          </thead>
          <tbody>
            {model.all.value.map((one) => (
              <tr
                key={one.id}
                class={one.id === model.shown.value.id ? 'shown' : undefined}
                data-verdict={one.verdict}
              >
                <th scope="row">{names[one.id](system)}</th>
                <td>{tripWords(one, system)}</td>
                <td>
                  <span class="verdict">{verdictWords[one.verdict]}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>{score(model)}</p>
      <dl class="readouts">
        <Readout
          label="Longest healthy slip over this limit"
          value={longestOver}
          quantity={seconds}
        >
          the time must be longer
        </Readout>
        <Readout label="Slowest healthy turbine stop" value={slowest} quantity={seconds}>
          the engagement check must come later
        </Readout>
      </dl>
      <p class="muted">
        A recording is made once, with a controller that never acts, in the training gearbox. So it
        cannot show what raised pressure would have done. The recordings and the limits are
        invented. A wide clearance is a clutch pack built at the loose end of what is allowed, and
        sound.
      </p>
    </section>
  );
}

/** The controller's states with the limits chosen; inked is the state at the cursor, else the last one. */
export function StateDiagram({ model, cursor }: Omit<SlipChartProps, 'revealed'>) {
  const shown = model.shown.value;
  const at = cursor.value ?? END;
  const current = shown.states.findLast(({ time }) => time <= at + 1e-9)?.state ?? 'waiting';
  const { settings } = model;
  const state = {
    current,
    settings: settings.value,
    parkSpeed: parkSpeedWords,
  };
  return (
    <figure class="sees-states">
      <figcaption>
        <strong>The controller’s states.</strong>{' '}
        {cursor.value === null
          ? 'Inked: where this recording ends. Move the cursor over the picture to follow it.'
          : 'Inked: the state at the cursor.'}
      </figcaption>
      <ControllerStatesDrawing id="controller-sees-states" state={state} />
      <More label="The diagram in words">
        <p>{describeControllerStates(state)}</p>
      </More>
    </figure>
  );
}
