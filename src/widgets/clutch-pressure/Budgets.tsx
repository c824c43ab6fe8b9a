import { COLD_C } from '../../car/cold-and-hot.ts';
import type { Reading } from '../../car/readings.ts';
import { BudgetBars, type BudgetPart } from '../../charts/BudgetBars.tsx';
import type { Circuit } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { flow, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { PressureModel } from './model.ts';
import { words } from './below-words.en.ts';

const { budget } = words;

/**
 * Full height [L/min], by engine speed alone, so that nothing but the engine rescales the bars: the
 * pump takes in 17 L/min for each 1000 rpm, and at one scale for all speeds the crack's share at
 * idle would be a hairline itself.
 */
const fullHeight = (rpm: number): number => (rpm <= 800 ? 14 : rpm <= 1600 ? 28 : 52);

const partsOf = (reading: Reading, circuit: Circuit): readonly BudgetPart[] => {
  const { rings, transferSeal } = reading.clutches[circuit].leaksLmin;
  return [
    { id: 'slip', label: budget.slip, value: reading.slipLmin, fill: 'dense' },
    { id: 'clearances', label: budget.clearances, value: reading.clearancesLmin, fill: 'sparse' },
    { id: 'bleed', label: budget.bleed, value: reading.bleedLmin, fill: 'sparse' },
    { id: 'rings', label: budget.rings, value: rings, fill: 'dense' },
    { id: 'crack', label: budget.crack, value: transferSeal, fill: 'full' },
    { id: 'left', label: budget.left, value: reading.leftOverLmin, fill: 'open' },
  ];
};

function share(reading: Reading, circuit: Circuit, tempC: number, system: UnitSystem): string {
  const print = printer(system);
  const taken = reading.clutches[circuit].leaksLmin.transferSeal;
  const nothing = reading.leftOverLmin === 0;
  const said = {
    temp: print(tempC, temperature),
    crack: print(taken, flow),
    left: print(reading.leftOverLmin, flow),
  };
  if (taken === 0) return (nothing ? budget.noCrackNothing : budget.noCrack)(said);
  return (nothing ? budget.takesAll : budget.takes)(said);
}

interface BudgetProps {
  readonly id: string;
  /** Stands still: the table under the bars goes by it, and would fold shut at every move. */
  readonly name: string;
  readonly model: PressureModel;
  readonly reading: Reading;
  readonly tempC: number;
}

function Budget({ id, name, model, reading, tempC }: BudgetProps) {
  const circuit = model.givens.circuit.value;
  return (
    <BudgetBars
      id={id}
      name={name}
      takeaway={(system) => share(reading, circuit, tempC, system)}
      quantity={flow}
      supply={{ label: budget.supply, value: reading.intakeLmin }}
      parts={partsOf(reading, circuit)}
      max={fullHeight(model.givens.rpm.value)}
    />
  );
}

interface BudgetsProps {
  readonly model: PressureModel;
}

// Each reads its own signals, so that the cold one rests while the temperature moves.
function Cold({ model }: BudgetsProps) {
  const reading = model.cold.value;
  return (
    <Budget id="clutch-pressure-cold" name={budget.cold} tempC={COLD_C} {...{ model, reading }} />
  );
}

function Now({ model }: BudgetsProps) {
  const reading = model.now.value;
  const tempC = model.givens.temp.value;
  return <Budget id="clutch-pressure-now" name={budget.now} {...{ model, reading, tempC }} />;
}

/** Where the pump's flow goes, cold and at the temperature chosen. */
export function Budgets({ model }: BudgetsProps) {
  return (
    <div class="pressure-budgets">
      <Cold model={model} />
      <Now model={model} />
    </div>
  );
}
