import {
  AIR_TARGETS,
  SHOP_TESTS,
  TAPS,
  soundBench,
  type ShopTest,
  type TestReadings,
} from '../../car/shop-tests.ts';
import { CIRCUITS } from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { flow, percent, pressure, speed, torque } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { needed } from '../clutch-pressure/needed.ts';
import type { RangesModel } from './model.ts';
import { PatternTable } from './PatternTable.tsx';
import { faultWords, rangeNames } from './words.ts';

interface TableProps {
  readonly model: RangesModel;
}

const across = (
  readings: Readonly<Record<ShopTest, TestReadings>>,
  read: (column: TestReadings) => number,
): Record<ShopTest, number> =>
  Object.fromEntries(SHOP_TESTS.map((test) => [test, read(readings[test])])) as Record<
    ShopTest,
    number
  >;

/** What every gauge shows: the pattern to recognise. */
export function Gauges({ model, revealed }: TableProps & { readonly revealed: boolean }) {
  const system = useUnits();
  const readings = model.readings.value;
  const pattern = model.pattern.value;
  return (
    <PatternTable
      name="What the gauges show"
      caption={
        <>
          <strong>What the gauges show:</strong>{' '}
          {revealed
            ? faultWords(model, system)
            : 'a healthy transmission, each range engaged in turn'}
          .
        </>
      }
      quantity={pressure}
      rows={[
        ...TAPS.map((tap) => ({
          id: tap,
          label: tap === 'line' ? 'Line' : rangeNames[tap],
          values: across(readings, ({ taps }) => taps[tap]),
          words: pattern.taps[tap],
        })),
        {
          id: 'left',
          label: 'Cooler gets',
          values: across(readings, ({ leftOver }) => leftOver),
          words: pattern.leftOver,
          gone: 'none',
          quantity: flow,
        },
      ]}
    />
  );
}

/** What each range can carry, which is what the driver feels. */
export function Torques({ model }: TableProps) {
  const system = useUnits();
  const readings = model.readings.value;
  const pattern = model.pattern.value;
  const says = (need: { readonly torque: number }): string => format(need.torque, torque, system);
  return (
    <PatternTable
      name="What each range can carry"
      caption={
        <>
          <strong>What each range can carry:</strong> standing in gear asks for {says(needed.idle)},
          1500 rpm for {says(needed['take-off'])}.
        </>
      }
      quantity={torque}
      rows={CIRCUITS.map((circuit) => ({
        id: circuit,
        label: rangeNames[circuit],
        values: across(readings, (column) => column.torque[circuit]),
        words: pattern.torque[circuit],
        gone: 'slips',
      }))}
    />
  );
}

/** What the bench and the scan data add: air, circuit by circuit, and the sensor. */
export function Bench({ model }: TableProps) {
  const system = useUnits();
  const bench = model.bench.value;
  const words = model.pattern.value.air;
  const rest = model.sensorAtRest.value;
  return (
    <figure class="pattern pattern-bench">
      <figcaption>
        <strong>On the bench:</strong> air at {format(275, pressure, system)}, valve body off, fluid
        cold.
      </figcaption>
      <table aria-label="On the bench">
        <thead>
          <tr>
            <th scope="col">Air goes off at</th>
            <th scope="col">here</th>
            <th scope="col">sound</th>
          </tr>
        </thead>
        <tbody>
          {AIR_TARGETS.map((target) => (
            <tr key={target}>
              <th scope="row">
                {target === 'transferSeal' ? 'Transfer seal' : `${rangeNames[target]} circuit`}
              </th>
              <td class={words[target] === 'leaks' ? 'pattern-gone' : 'pattern-ok'}>
                <span class="pattern-number">{format(bench[target], percent, system)}</span>{' '}
                <span class="pattern-word">{words[target]}</span>
              </td>
              <td>{format(soundBench[target], percent, system)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">Turbine sensor, turbine at rest</th>
            <td class={rest > 0 ? 'pattern-gone' : 'pattern-ok'}>
              <span class="pattern-number">{format(rest, speed, system)}</span>{' '}
              <span class="pattern-word">{rest > 0 ? 'false' : 'ok'}</span>
            </td>
            <td>{format(0, speed, system)}</td>
          </tr>
        </tbody>
      </table>
    </figure>
  );
}

/** What ok, low and gone mean: said once, for all three tables. */
export function Legend() {
  const system = useUnits();
  const say = (need: { readonly pressure: number }): string =>
    format(need.pressure, pressure, system);
  return (
    <p class="pattern-legend">
      <strong>Ok</strong>: within a tenth of a healthy transmission. <strong>Low</strong>: more than
      a tenth down, still enough for the test. <strong>Gone</strong>: not enough to hold, under{' '}
      {say(needed.idle)} at idle or {say(needed['take-off'])} at 1500 rpm. The cooler is low under
      half of a healthy transmission’s flow. Car held, engine driving against the converter, range
      engaged one at a time. This is arithmetic on an invented transmission: on a car this is a
      stall test. Follow the maker’s procedure or leave it.
    </p>
  );
}
