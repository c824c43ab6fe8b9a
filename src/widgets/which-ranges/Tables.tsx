import { words as names } from '../../car/words.en.ts';
import { CIRCUITS } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, speed, torque } from '../../quantity/quantities.ts';
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
