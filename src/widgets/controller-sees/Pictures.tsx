import type { Signal } from '@preact/signals';
import { ControllerStatesDrawing, describeControllerStates } from '../../drawings/index.ts';
import { More } from '../../ui/More.tsx';
import { seconds } from '../../quantity/quantities.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { SeesModel, Verdict } from './model.ts';
import { parkSpeedWords } from './park-speed.ts';
import { END } from '../../car/recordings.ts';
import { names, score, tripWords } from './words.ts';

const verdictWords: Readonly<Record<Verdict, string>> = {
  passes: 'passes',
  'false alarm': 'FALSE ALARM',
  caught: 'caught',
  'missed fault': 'MISSED FAULT',
};

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
        A recording is made once, with a controller that never acts, in the training transmission.
        So it cannot show what raised pressure would have done. The recordings and the limits are
        invented. A wide clearance is a clutch pack built at the loose end of what is allowed, and
        sound.
      </p>
    </section>
  );
}

interface StateDiagramProps {
  readonly model: SeesModel;
  readonly cursor: Signal<number | null>;
}

/** The controller's states with the limits chosen; inked is the state at the cursor, else the last one. */
export function StateDiagram({ model, cursor }: StateDiagramProps) {
  const shown = model.shown.value;
  const at = cursor.value ?? END;
  const current = shown.states.findLast(({ time }) => time <= at + 1e-9)?.state ?? 'waiting';
  const { settings } = model;
  const state = {
    current,
    settings: settings.value,
    parkSpeed: parkSpeedWords(useUnits()),
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
