import { Both } from '../../ui/Both.tsx';
import { format, formatNumber } from '../../quantity/print.ts';
import { flow, pressure, speed, temperature } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { useUnits } from '../../ui/use-units.ts';
import { soundReadings, type HungryModel, type Reading } from './model.ts';
import { COLD_C, FAST_RPM, HOT_C, IDLE_RPM } from './ranges.ts';
import { eaterNames, EATERS, fedWords, NOTHING, type Eater } from './words.ts';

function Amount({ of, reading }: { readonly of: Eater; readonly reading: Reading }) {
  if (of === 'leftOver' && reading.flows.leftOver < NOTHING) return <strong>nothing</strong>;
  return of === 'leftOver' ? (
    <Both value={reading.flows.leftOver} quantity={flow} />
  ) : (
    <Both value={of === 'line' ? reading.line : reading.clutch} quantity={pressure} />
  );
}

/** Who loses first, second and last, and how each stands now. */
export function Order({ model }: { readonly model: HungryModel }) {
  const now = model.now.value;
  const words = fedWords(now, model.sound.value);
  return (
    <figure class="hungry-order">
      <figcaption>
        <strong>The order of hunger:</strong> the regulator feeds the line first and sends on what
        is over.
      </figcaption>
      <ol>
        {EATERS.map((eater) => (
          <li key={eater}>
            <span class={`hungry-mark ${words[eater]}`}>
              <span>{words[eater]}</span>
            </span>{' '}
            {eaterNames[eater]}: <Amount of={eater} reading={now} />
          </li>
        ))}
      </ol>
      <p class="hungry-note">
        Short: less than half of what a healthy transmission leaves over here; line under its
        command; clutch too weak to take off. Hungry: nothing left over; line under the clutch’s
        command; clutch too weak to stand in gear.
      </p>
    </figure>
  );
}

interface RowProps {
  readonly head: string;
  readonly quantity: Quantity;
  readonly values: readonly number[];
}
/** The unit stands with the name: four numbers with units do not fit a phone. */
function Row({ head, quantity, values }: RowProps) {
  const system = useUnits();
  return (
    <tr>
      <th scope="row">
        {head}, {quantity[system].symbol}
      </th>
      {values.map((value, i) => (
        <td key={i}>{formatNumber(value, quantity, system)}</td>
      ))}
    </tr>
  );
}

/** Hot at idle shows a leak, cold and fast shows a starved pump: both readings, and a healthy transmission beside them. */
export function TwoReadings({ model }: { readonly model: HungryModel }) {
  const system = useUnits();
  const { hotIdle, coldFast } = model.twoReadings.value;
  const where = (tempC: number, rpm: number): string =>
    `${format(tempC, temperature, system)}, ${format(rpm, speed, system)}`;
  const columns = [hotIdle, soundReadings.hotIdle, coldFast, soundReadings.coldFast];
  return (
    <figure class="hungry-two">
      <figcaption>
        <strong>Two readings:</strong> this transmission beside a sound one.
      </figcaption>
      <table aria-label="Two readings">
        <thead>
          <tr>
            <td />
            <th scope="colgroup" colSpan={2}>
              {where(HOT_C, IDLE_RPM)}
            </th>
            <th scope="colgroup" colSpan={2}>
              {where(COLD_C, FAST_RPM)}
            </th>
          </tr>
          <tr>
            <td />
            {['this', 'sound', 'this', 'sound'].map((head, i) => (
              <th key={i} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Row head="Line" quantity={pressure} values={columns.map(({ line }) => line)} />
          <Row
            head="Left over"
            quantity={flow}
            values={columns.map(({ flows }) => flows.leftOver)}
          />
        </tbody>
      </table>
    </figure>
  );
}
