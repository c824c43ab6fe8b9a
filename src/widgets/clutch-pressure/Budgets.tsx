import { BudgetBars, type BudgetPart } from '../../charts/BudgetBars.tsx';
import { format } from '../../quantity/print.ts';
import { flow, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { PressureModel, Reading } from './model.ts';
import { COLD_C } from './ranges.ts';

/**
 * Full height [L/min], by engine speed alone, so that nothing but the engine rescales the bars: the
 * pump takes in 17 L/min for each 1000 rpm, and at one scale for all speeds the crack's share at
 * idle would be a hairline itself.
 */
const fullHeight = (rpm: number): number => (rpm <= 800 ? 14 : rpm <= 1600 ? 28 : 52);

const partsOf = ({ flows }: Reading): readonly BudgetPart[] => [
  { id: 'slip', label: 'pump slip', value: flows.slip, fill: 'dense' },
  { id: 'clearances', label: 'clearances', value: flows.clearances, fill: 'sparse' },
  { id: 'bleed', label: 'bleeds', value: flows.bleed, fill: 'sparse' },
  { id: 'rings', label: 'rings', value: flows.rings, fill: 'dense' },
  { id: 'crack', label: 'the crack', value: flows.crack, fill: 'full' },
  // Nil as long as the crack is the only fault; without a line of its own unless it is something.
  ...(flows.other > 0
    ? [{ id: 'other', label: 'other leaks', value: flows.other, fill: 'sparse' } as const]
    : []),
  { id: 'left', label: 'converter, lubrication', value: flows.leftOver, fill: 'open' },
];

function share({ flows }: Reading, tempC: number, system: UnitSystem): string {
  const left = flows.leftOver === 0 ? 'nothing' : format(flows.leftOver, flow, system);
  const taken =
    flows.crack === 0
      ? 'no crack in this circuit'
      : `the crack takes ${format(flows.crack, flow, system)}`;
  return `at ${format(tempC, temperature, system)} ${taken}, ${left} is left for converter and lubrication.`;
}

interface BudgetProps {
  readonly id: string;
  /** Stands still: the table under the bars goes by it, and would fold shut at every move. */
  readonly name: string;
  readonly reading: Reading;
  readonly tempC: number;
  readonly rpm: number;
}

function Budget({ id, name, reading, tempC, rpm }: BudgetProps) {
  return (
    <BudgetBars
      id={id}
      name={name}
      takeaway={(system) => share(reading, tempC, system)}
      quantity={flow}
      supply={{ label: 'Pump takes in', value: reading.flows.intake }}
      parts={partsOf(reading)}
      max={fullHeight(rpm)}
    />
  );
}

function ColdBudget({ model }: { readonly model: PressureModel }) {
  return (
    <Budget
      id="clutch-pressure-cold"
      name="Flow, cold"
      reading={model.cold.value}
      tempC={COLD_C}
      rpm={model.givens.rpm.value}
    />
  );
}

function BudgetNow({ model }: { readonly model: PressureModel }) {
  return (
    <Budget
      id="clutch-pressure-now"
      name="Flow, now"
      reading={model.now.value}
      tempC={model.givens.temp.value}
      rpm={model.givens.rpm.value}
    />
  );
}

/** Where the pump's flow goes, cold and at the temperature chosen. */
export function Budgets({ model }: { readonly model: PressureModel }) {
  return (
    <div class="pressure-budgets">
      <ColdBudget model={model} />
      <BudgetNow model={model} />
    </div>
  );
}
