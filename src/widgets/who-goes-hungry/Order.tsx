import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import type { Reading } from '../../car/readings.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { flow, pressure, speed, temperature } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { Both } from '../../ui/Both.tsx';
import { useUnits } from '../../ui/use-units.ts';
import {
  CONSUMERS,
  FAST_RPM,
  healthyReadings,
  IDLE_RPM,
  NOTHING,
  type Consumer,
  type PumpModel,
} from './model.ts';
import { words } from './below-words.en.ts';

const { order, two } = words;

function Amount({ of, reading }: { readonly of: Consumer; readonly reading: Reading }) {
  const { leftOverLmin, lineKpa, clutches } = reading;
  if (of === 'leftOver') {
    if (leftOverLmin < NOTHING) return <strong>{order.nothing}</strong>;
    return <Both value={leftOverLmin} quantity={flow} />;
  }
  return <Both value={of === 'line' ? lineKpa : clutches.forward.kPa} quantity={pressure} />;
}

/** Who loses first, second and last, and how each stands now. */
export function Order({ model }: { readonly model: PumpModel }) {
  const fed = model.fed.value;
  return (
    <figure class="pump-order">
      <figcaption>
        <strong>{order.name}</strong> {order.how}
      </figcaption>
      <ol>
        {CONSUMERS.map((consumer) => (
          <li key={consumer}>
            <span class={`pump-mark ${fed[consumer]}`}>
              <span>{order.states[fed[consumer]]}</span>
            </span>{' '}
            {order.who[consumer]}: <Amount of={consumer} reading={model.now.value} />
          </li>
        ))}
      </ol>
      <p class="pump-note">{order.note}</p>
    </figure>
  );
}

interface RowProps {
  readonly head: (p: { unit: string }) => string;
  readonly quantity: Quantity;
  readonly values: readonly number[];
}
/** The unit stands with the name: four numbers with units do not fit a phone. */
function Row({ head, quantity, values }: RowProps) {
  const system = useUnits();
  return (
    <tr>
      <th scope="row">{head({ unit: quantity[system].symbol })}</th>
      {values.map((value, i) => (
        <td key={i}>{formatNumber(value, quantity, system)}</td>
      ))}
    </tr>
  );
}

/** Hot at idle shows a leak, cold and fast shows a starved pump: both readings, and a healthy transmission beside them. */
export function TwoReadings({ model }: { readonly model: PumpModel }) {
  const system = useUnits();
  const { hotIdle, coldFast } = model.twoReadings.value;
  const where = (tempC: number, rpm: number): string =>
    two.where({ temp: format(tempC, temperature, system), speed: format(rpm, speed, system) });
  const columns = [hotIdle, healthyReadings.hotIdle, coldFast, healthyReadings.coldFast];
  return (
    <figure class="pump-two">
      <figcaption>
        <strong>{two.head}</strong> {two.how}
      </figcaption>
      <table aria-label={two.name}>
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
            {[two.this, two.healthy, two.this, two.healthy].map((head, i) => (
              <th key={i} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Row head={two.line} quantity={pressure} values={columns.map((one) => one.lineKpa)} />
          <Row head={two.left} quantity={flow} values={columns.map((one) => one.leftOverLmin)} />
        </tbody>
      </table>
    </figure>
  );
}
