import { useComputed } from '@preact/signals';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { needOf } from '../../car/need.ts';
import { training } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, seconds, temperature } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { FEED, pressureAt, type WaysModel } from './model.ts';
import { cableRoles, wireRoles, type Roles } from './roles.ts';
import { stoppedAfter } from './stopping.ts';
import { words as texts } from './words.en.ts';

const { port, caution } = words;
const PARTS = Object.entries(words.parts) as readonly (readonly [keyof Roles, string])[];

interface Props {
  readonly model: WaysModel;
}

/** Under the controls, so that on a phone these stay close to the drawings; part by part, so that the two can be compared. */
function WhoDoesWhat({ model }: Props) {
  const wire = wireRoles(model, useUnits());
  const cable = cableRoles(model);
  return (
    <section class="ways-roles" aria-labelledby="two-ways-roles">
      <h4 id="two-ways-roles">{words.roles}</h4>
      {PARTS.map(([part, name]) => (
        <div key={part} class="ways-role">
          <h5>{name}</h5>
          <p>
            <strong>{words.byWire}</strong> {wire[part]}
          </p>
          <p>
            <strong>{words.byCable}</strong> {cable[part]}
          </p>
        </div>
      ))}
    </section>
  );
}

/** What the port of the manual valve does to the clutch behind it: cold beside hot, set right beside as set. */
function Port({ model }: Props) {
  const print = printer(useUnits());
  const { circuit, open, givens } = model;
  const solved = (opened: () => number) =>
    useComputed(() =>
      [COLD_C, HOT_C].map((tempC) => ({
        has: pressureAt(circuit.value, opened(), tempC),
        stopped: stoppedAfter(circuit.value, opened(), tempC),
      })),
    );
  const right = solved(() => FEED.max);
  const now = solved(() => open.value);
  const cell = ({ has: kPa, stopped }: { has: number; stopped: number | null }): string => {
    const has = print(kPa, pressure);
    return stopped === null
      ? port.never({ has })
      : port.stops({ has, time: print(stopped, seconds) });
  };
  const rows = [
    port.cold({ temp: print(COLD_C, temperature) }),
    port.hot({ temp: print(HOT_C, temperature) }),
  ];
  return (
    <section class="ways-port" aria-labelledby="two-ways-port">
      <h4 id="two-ways-port">{port.name}</h4>
      <div class="table-scroll" role="region" tabIndex={0} aria-label={port.table}>
        <table>
          <thead>
            <tr>
              <th scope="col">{port.fluid}</th>
              <th scope="col">{port.right}</th>
              <th scope="col">
                {givens.fault.value === 'misSet'
                  ? port.open({ open: print(open.value, percent) })
                  : port.now}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((name, i) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {[right, now].map(({ value }, side) => (
                  <td key={side}>{value[i] && cell(value[i])}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>
        {port.about({
          range: texts.ranges[circuit.value === 'reverse' ? 'R' : 'D'],
          need: print(needOf('firm', training, circuit.value).kPa, pressure),
        })}
      </p>
      <p>
        <strong>{caution.lead}</strong> {caution.text}
      </p>
    </section>
  );
}

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: Props) {
  return (
    <>
      <WhoDoesWhat model={model} />
      <Port model={model} />
    </>
  );
}
