import { COLD_C } from '../../car/cold-and-hot.ts';
import type { Reading } from '../../car/readings.ts';
import { BudgetBars, type BudgetPart } from '../../charts/BudgetBars.tsx';
import { format } from '../../quantity/print.ts';
import { flow, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { heldBack, NOTHING, type PumpModel } from './model.ts';
import { words } from './below-words.en.ts';

const { budget } = words;

/**
 * Full height [L/min], by engine speed alone: the pump moves 17 L/min for each 1000 rpm, and at
 * one scale for all speeds idle would be a sliver. Both temperatures share it.
 */
const fullHeight = (rpm: number): number => (rpm <= 800 ? 14 : rpm <= 1600 ? 28 : 52);

const partsOf = (reading: Reading): readonly BudgetPart[] => [
  { id: 'slip', label: budget.slip, value: reading.slipLmin, fill: 'full' },
  { id: 'clearances', label: budget.clearances, value: reading.clearancesLmin, fill: 'sparse' },
  { id: 'bleed', label: budget.bleed, value: reading.bleedLmin, fill: 'sparse' },
  // Nil in a healthy bore; without a line of its own unless it is something.
  ...(reading.boreLmin > 0
    ? [{ id: 'bore', label: budget.bore, value: reading.boreLmin, fill: 'dense' } as const]
    : []),
  {
    id: 'clutch',
    label: budget.clutch,
    value: reading.clutches.forward.feedLmin,
    fill: 'sparse',
  },
  { id: 'left', label: budget.leftOver, value: reading.leftOverLmin, fill: 'open' },
];

function takeawayOf(reading: Reading, system: UnitSystem): string {
  const print = (value: number): string => format(value, flow, system);
  const { intakeLmin, fullLmin, leftOverLmin } = reading;
  if (heldBack(reading)) {
    return budget.filter({ draws: print(intakeLmin), full: print(fullLmin) });
  }
  return leftOverLmin < NOTHING ? budget.allTaken : budget.left({ left: print(leftOverLmin) });
}

interface BudgetProps {
  readonly id: string;
  readonly tempC: number;
  readonly reading: Reading;
  readonly rpm: number;
}

function Budget({ id, tempC, reading, rpm }: BudgetProps) {
  const system = useUnits();
  return (
    <BudgetBars
      id={id}
      name={budget.name({ temp: format(tempC, temperature, system) })}
      takeaway={(s) => takeawayOf(reading, s)}
      quantity={flow}
      supply={{ label: budget.supply, value: reading.intakeLmin }}
      parts={partsOf(reading)}
      max={fullHeight(rpm)}
    />
  );
}

/** What the pump draws and who takes it, cold and at the temperature chosen. */
export function Budgets({ model }: { readonly model: PumpModel }) {
  const { givens, cold, now } = model;
  const rpm = givens.rpm.value;
  return (
    <div class="pump-budgets">
      <Budget id="who-goes-hungry-cold" tempC={COLD_C} reading={cold.value} rpm={rpm} />
      <Budget id="who-goes-hungry-now" tempC={givens.temp.value} reading={now.value} rpm={rpm} />
    </div>
  );
}
