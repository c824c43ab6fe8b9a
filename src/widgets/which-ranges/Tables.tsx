import { AIR_TARGETS, soundBench } from '../../car/shop-tests.ts';
import { words as names } from '../../car/words.en.ts';
import { BENCH_AIR, CIRCUITS } from '../../engine/index.ts';
import { format, printer } from '../../quantity/print.ts';
import { percent, pressure, speed, torque } from '../../quantity/quantities.ts';
import { needed } from '../../simulation/required/control.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { RangesModel } from './model.ts';
import { across, PatternTable } from './PatternTable.tsx';
import { words } from './below-words.en.ts';
import { words as common } from './words.en.ts';

interface TableProps {
  readonly model: RangesModel;
}

/** What each range can carry, which is what the driver feels. */
export function Torques({ model }: TableProps) {
  const print = printer(useUnits());
  const readings = model.readings.value;
  const pattern = model.pattern.value;
  const { name, head, need } = words.torques;
  return (
    <PatternTable
      name={name}
      head={head}
      caption={need({
        standing: print(needed.idle.torqueNm, torque),
        speed: print(needed['take-off'].engineRpm, speed),
        firm: print(needed['take-off'].torqueNm, torque),
      })}
      quantity={torque}
      rows={CIRCUITS.map((circuit) => ({
        id: circuit,
        label: names.circuits[circuit],
        values: across(readings, (column) => column.torque[circuit]),
        verdicts: pattern.torque[circuit],
        gone: common.table.slips,
      }))}
    />
  );
}

/** What the bench and the scan data add: air, circuit by circuit, and the sensor. */
export function Bench({ model }: TableProps) {
  const system = useUnits();
  const held = model.bench.value;
  const { air } = model.pattern.value;
  const rest = model.sensorAtRest.value;
  const { bench } = words;
  return (
    <figure class="pattern pattern-bench">
      <figcaption>
        <strong>{bench.head}</strong>{' '}
        {bench.how({
          supply: format((BENCH_AIR.supply - BENCH_AIR.ambient) / 1e3, pressure, system),
        })}
      </figcaption>
      <table aria-label={bench.name}>
        <thead>
          <tr>
            <th scope="col">{bench.held}</th>
            <th scope="col">{bench.here}</th>
            <th scope="col">{bench.healthy}</th>
          </tr>
        </thead>
        <tbody>
          {AIR_TARGETS.map((target) => (
            <tr key={target}>
              <th scope="row">{bench.circuits[target]}</th>
              <td class={air[target] === 'leaks' ? 'pattern-gone' : 'pattern-ok'}>
                <span class="pattern-number">{format(held[target], percent, system)}</span>{' '}
                <span class="pattern-word">{bench.air[air[target]]}</span>
              </td>
              <td>{format(soundBench[target], percent, system)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">{bench.sensor}</th>
            <td class={rest > 0 ? 'pattern-gone' : 'pattern-ok'}>
              <span class="pattern-number">{format(rest, speed, system)}</span>{' '}
              <span class="pattern-word">{rest > 0 ? bench.false : bench.true}</span>
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
  const print = printer(useUnits());
  const { legend } = words;
  return (
    <p class="pattern-legend">
      <strong>{legend.ok}</strong>: {legend.okIs} <strong>{legend.low}</strong>: {legend.lowIs}{' '}
      <strong>{legend.gone}</strong>:{' '}
      {legend.goneIs({
        standing: print(needed.idle.kPa, pressure),
        firm: print(needed['take-off'].kPa, pressure),
        speed: print(needed['take-off'].engineRpm, speed),
      })}{' '}
      {legend.load({ speed: print(needed['take-off'].engineRpm, speed) })} {legend.rest}
    </p>
  );
}
