import { parkSpeed } from '../../car/park-speed.ts';
import { END } from '../../car/recordings.ts';
import { ControllerStatesDrawing, describeControllerStates } from '../../drawings/index.ts';
import { seconds } from '../../quantity/quantities.ts';
import { stateAt } from '../../simulation/traces/controller.ts';
import { More } from '../../ui/More.tsx';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { SeesModel } from './model.ts';
import { failureOf, nameOf, score } from './print.ts';
import { words } from './words.en.ts';

const { table, worst, states } = words;

interface Props {
  readonly model: SeesModel;
}

/** Every recording under the same limits. */
function Score({ model }: Props) {
  const system = useUnits();
  const { longestOver, slowest } = model.healthyWorst.value;
  return (
    <div class="sees-score">
      <h4>{table.name}</h4>
      <div class="table-scroll" role="region" tabIndex={0} aria-label={table.name}>
        <table>
          <thead>
            <tr>
              {[table.recording, table.failed, table.verdict].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {model.all.value.map((one) => (
              <tr
                key={one.id}
                class={one.id === model.shown.value.id ? 'shown' : undefined}
                data-verdict={one.verdict}
              >
                <th scope="row">{nameOf(one.id, system)}</th>
                <td>{failureOf(one, system)}</td>
                <td>
                  <span class="verdict">{words.verdicts[one.verdict]}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>{score(model, system)}</p>
      <dl class="readouts">
        <Readout label={worst.over} value={longestOver} quantity={seconds}>
          {worst.longer}
        </Readout>
        <Readout label={worst.stop} value={slowest} quantity={seconds}>
          {worst.later}
        </Readout>
      </dl>
      <p class="muted">{words.made}</p>
    </div>
  );
}

/** The controller's states with the limits chosen; inked is the state at the cursor, else the last one. */
function States({ model }: Props) {
  const { cursor, settings, shown } = model;
  const current = stateAt(shown.value.states, cursor.value ?? END);
  const state = { current, settings: settings.value, parkSpeed: parkSpeed(useUnits()) };
  return (
    <figure class="sees-states">
      <figcaption>
        <strong>{states.name}</strong> {cursor.value === null ? states.end : states.cursor}
      </figcaption>
      <ControllerStatesDrawing id="controller-sees-states" state={state} />
      <More label={states.inWords}>
        <p>{describeControllerStates(state)}</p>
      </More>
    </figure>
  );
}

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: Props) {
  return (
    <>
      <Score model={model} />
      <States model={model} />
    </>
  );
}
