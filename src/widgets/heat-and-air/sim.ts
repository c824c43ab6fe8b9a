import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { words as names } from '../../car/words.en.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { circuitControl } from '../../simulation/choices/circuit.ts';
import { temperatureControl } from '../../simulation/choices/number.ts';
import { faultControl, severityControl } from '../../simulation/faults/controls.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import {
  HEALTHY_AIR,
  makeModel,
  PLACES,
  type HeatAndAirGivens,
  type HeatAndAirModel,
} from './model.ts';
import { words } from './words.en.ts';

const start: HeatAndAirGivens = {
  fault: 'sealingRings',
  severity: 0,
  temp: COLD_C,
  circuit: 'forward',
};
/** Worn by a fifth: the hot clutch still stands in gear, with about half of what a healthy one has. */
const end = { severity: 20 };

/** The model at a state, for the numbers that the words name. */
export function at(state: Partial<HeatAndAirGivens>): HeatAndAirModel {
  const model = makeModel();
  model.apply({ ...start, ...state });
  return model;
}

function readings(model: HeatAndAirModel, system: UnitSystem) {
  const print = printer(system);
  const hot = model.at(HOT_C);
  return {
    hot: print(hot.here, pressure),
    healthy: print(hot.healthy, pressure),
    cold: print(model.at(COLD_C).here, pressure),
    held: print(model.air.value.circuit, percent),
    whole: print(HEALTHY_AIR.circuit, percent),
    atHot: print(HOT_C, temperature),
  };
}
const worn = at(end);
const { options, ...predict } = told(words.predict, (system) => readings(worn, system));

/** Held air by which a shop would call a circuit good: ten points under a healthy one [%]. */
export const GOOD_AIR = HEALTHY_AIR.circuit - 10;

export const sim: SimSpec<HeatAndAirGivens, HeatAndAirModel> = {
  id: 'heat-and-air',
  title: words.title,
  linkVersion: 1,
  controls: [
    faultControl('fault', words.controls.fault, PLACES),
    severityControl('severity'),
    temperatureControl('temp'),
    circuitControl('circuit', words.controls.circuit),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    outcome: (model) => {
      const { circuit } = model.air.value;
      const { here, healthy } = model.at(HOT_C);
      const option =
        circuit >= GOOD_AIR
          ? 'like-healthy'
          : circuit > (0.6 * (HEALTHY_AIR.circuit * here)) / healthy
            ? 'in-step'
            : 'far-less';
      return { option, words: (system) => words.outcome(readings(model, system)) };
    },
  },
  says: ({ givens, now, healthyNow, air }, system) => {
    const print = printer(system);
    return words.says({
      fault: givens.severity.value > 0 ? names.faults[givens.fault.value] : words.healthy,
      clutch: names.circuits[givens.circuit.value],
      has: print(now.value, pressure),
      temp: print(givens.temp.value, temperature),
      healthy: print(healthyNow.value, pressure),
      held: print(air.value.circuit, percent),
      seal: print(air.value.seal, percent),
    });
  },
};
