import { format } from '../../quantity/print.ts';
import { percent, pressure, seconds, temperature } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { needed } from '../clutch-pressure/needed.ts';
import type { Consequence, WaysModel } from './model.ts';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { electronicRoles, mechanicalRoles, type Roles } from './roles.ts';

const ROLES: readonly { readonly key: keyof Roles; readonly words: string }[] = [
  { key: 'hand', words: 'Your hand' },
  { key: 'controller', words: 'The controller' },
  { key: 'park', words: 'Park' },
];

/** Under the controls, so that on a phone these stay close to the drawings; part by part, so that the two can be compared. */
function WhoDoesWhat({ model }: { readonly model: WaysModel }) {
  const wire = electronicRoles(model, useUnits());
  const cable = mechanicalRoles(model);
  return (
    <section class="ways-roles" aria-labelledby="two-ways-roles">
      <h4 id="two-ways-roles">What moves what</h4>
      {ROLES.map(({ key, words }) => (
        <div key={key} class="ways-role">
          <h5>{words}</h5>
          <p>
            <strong>By wire:</strong> {wire[key]}
          </p>
          <p>
            <strong>By cable:</strong> {cable[key]}
          </p>
        </div>
      ))}
    </section>
  );
}

/** What the port of the manual valve does to the clutch behind it: cold beside hot, set right beside as set. */
function Port({ model }: { readonly model: WaysModel }) {
  const system = useUnits();
  const { whole, cold, hot, open, givens } = model;
  const misSet = givens.fault.value === 'misSet';
  const row = (label: string, tempC: number, right: Consequence, now: Consequence) => (
    <tr>
      <th scope="row">
        {label}, {format(tempC, temperature, system)}
      </th>
      {[right, now].map((one, i) => (
        <td key={i}>
          {format(one.clutch, pressure, system)}, turbine{' '}
          {one.stopped === null
            ? 'does not stop'
            : `stops after ${format(one.stopped, seconds, system)}`}
        </td>
      ))}
    </tr>
  );
  return (
    <section class="ways-port" aria-labelledby="two-ways-port">
      <h4 id="two-ways-port">What a mis-set cable does to the clutch</h4>
      <div class="table-scroll" role="region" tabIndex={0} aria-label="Clutch pressure at idle">
        <table>
          <thead>
            <tr>
              <th scope="col">Fluid</th>
              <th scope="col">Cable set right</th>
              <th scope="col">
                {misSet ? `Port ${format(open.value, percent, system)} open` : 'As it is now'}
              </th>
            </tr>
          </thead>
          <tbody>
            {row('Cold', COLD_C, whole.value.cold, cold.value)}
            {row('Hot', HOT_C, whole.value.hot, hot.value)}
          </tbody>
        </table>
      </div>
      <p>
        Clutch pressure at idle in the training transmission, with{' '}
        {givens.range.value === 'R' ? 'Reverse' : 'Drive'} fed, and how long the turbine takes to
        stop. Taking off needs {format(needed['take-off'].pressure, pressure, system)}. A port half
        shut fills the clutch late at any temperature. Hot, even sound rings leak more than a nearly
        shut port can bring.
      </p>
      <p>
        <strong>Caution.</strong> A car that drops to Neutral, or whose cable is being set, can
        roll. Brake on and wheels chocked before you reach under it or let go of the brake. The
        maker’s service information says how this one is set and how Park is released by hand.
      </p>
    </section>
  );
}

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: { readonly model: WaysModel }) {
  return (
    <>
      <WhoDoesWhat model={model} />
      <Port model={model} />
    </>
  );
}
