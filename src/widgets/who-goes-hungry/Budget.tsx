import { BudgetBars, type BudgetPart } from '../../charts/BudgetBars.tsx';
import { format } from '../../quantity/print.ts';
import { flow, temperature } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { HungryModel, Reading } from './model.ts';
import { COLD_C } from './ranges.ts';
import { NOTHING, starved } from './words.ts';

/**
 * Full height [L/min], by engine speed alone: the pump moves 17 L/min for each 1000 rpm, and at
 * one scale for all speeds idle would be a sliver. Both temperatures share it.
 */
const fullHeight = (rpm: number): number => (rpm <= 800 ? 14 : rpm <= 1600 ? 28 : 52);

const partsOf = ({ flows }: Reading): readonly BudgetPart[] => [
  { id: 'slip', label: 'slips back in the pump', value: flows.slip, fill: 'full' },
  { id: 'clearances', label: 'clearances', value: flows.clearances, fill: 'sparse' },
  { id: 'bleed', label: 'bleeds', value: flows.bleed, fill: 'sparse' },
  // Nil in a sound bore; without a line of its own unless it is something.
  ...(flows.bore > 0
    ? [{ id: 'bore', label: 'regulator bore', value: flows.bore, fill: 'dense' } as const]
    : []),
  { id: 'clutch', label: 'forward clutch', value: flows.clutch, fill: 'sparse' },
  { id: 'left', label: 'left over', value: flows.leftOver, fill: 'open' },
];

interface BudgetProps {
  readonly id: string;
  readonly tempC: number;
  readonly reading: Reading;
  readonly rpm: number;
}

function Budget({ id, tempC, reading, rpm }: BudgetProps) {
  const system = useUnits();
  const { flows } = reading;
  return (
    <BudgetBars
      id={id}
      name={`Flow at ${format(tempC, temperature, system)}`}
      takeaway={
        starved(reading)
          ? `the filter holds the pump to ${format(flows.intake, flow, system)} of ${format(flows.full, flow, system)}.`
          : flows.leftOver < NOTHING
            ? 'all of it is taken; nothing is left over.'
            : `${format(flows.leftOver, flow, system)} is left for converter, cooler and lubrication.`
      }
      quantity={flow}
      supply={{ label: 'Pump draws', value: flows.intake }}
      parts={partsOf(reading)}
      max={fullHeight(rpm)}
    />
  );
}

/** What the pump draws and who takes it, cold and at the temperature chosen. */
export function Budgets({ model }: { readonly model: HungryModel }) {
  const { givens, cold, now } = model;
  const rpm = givens.rpm.value;
  return (
    <div class="hungry-budgets">
      <Budget id="who-goes-hungry-cold" tempC={COLD_C} reading={cold.value} rpm={rpm} />
      <Budget id="who-goes-hungry-now" tempC={givens.temp.value} reading={now.value} rpm={rpm} />
    </div>
  );
}
