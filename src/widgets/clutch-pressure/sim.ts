import { REFERENCE_CRACK_MM } from '../../car/car.ts';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { words as names } from '../../car/words.en.ts';
import { hairs } from '../../quantity/hairs/hairs.ts';
import { formatApart } from '../../quantity/print-apart.ts';
import { printer } from '../../quantity/print.ts';
import { length, pressure, speed, temperature, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { circuitControl, testPointControl } from '../../simulation/choices/circuit.ts';
import { fluidControl } from '../../simulation/choices/fluid-class.ts';
import {
  crackControl,
  numberControl,
  temperatureControl,
} from '../../simulation/choices/number.ts';
import { DEMAND_OF, needed, requiredControl } from '../../simulation/required/control.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { makeModel, type PressureGivens, type PressureModel } from './model.ts';
import { words } from './words.en.ts';

const SPEED = { min: 500, max: 3000, step: 50 };
/** A twentieth: less than a shop gauge would show anybody. */
const NOTICEABLE = 0.95;

/** The crack that the course follows, at idle in forward, with the engine and the commands of the idle test. */
export const REFERENCE: Omit<PressureGivens, 'temp'> = {
  crack: REFERENCE_CRACK_MM,
  rpm: 700,
  required: 'take-off',
  circuit: 'forward',
  point: 'idle',
  fluid: 'low-viscosity',
};
const start = { ...REFERENCE, temp: COLD_C };
const end = { temp: HOT_C };

/** The model at a state, for the numbers that the words name. */
export function at(state: Partial<PressureGivens>): PressureModel {
  const model = makeModel();
  model.apply({ ...start, ...state });
  return model;
}

/** What is asked of the clutch, as the subject of a sentence. */
export const demandOf = ({ givens }: PressureModel): string =>
  names.demands[DEMAND_OF[givens.required.value]];

const before = at({}).clutch.value.kPa;
const needs = (system: UnitSystem) => ({
  standing: printer(system)(needed.idle.kPa, pressure),
  firm: printer(system)(needed['take-off'].kPa, pressure),
});
const { options, ...predict } = told(words.predict, (system) => {
  const print = printer(system);
  const hot = at(end);
  return {
    ...needs(system),
    hairs: hairs(REFERENCE.crack),
    crack: print(REFERENCE.crack, length),
    cold: print(COLD_C, temperature),
    hot: print(HOT_C, temperature),
    before: print(before, pressure),
    line: print(hot.now.value.lineKpa, pressure),
    clutch: print(hot.clutch.value.kPa, pressure),
  };
});
const { controls, says } = words;

function limitOf(model: PressureModel, system: UnitSystem): string {
  if (model.givens.circuit.value === 'high') return says.spared;
  const demand = demandOf(model);
  const edge = model.letsGo.value;
  if (edge.kind !== 'at') return says.limit[edge.kind]({ demand });
  return says.limit.at({ demand, temp: printer(system)(edge.tempC, temperature) });
}

export const sim: SimSpec<PressureGivens, PressureModel> = {
  id: 'clutch-pressure',
  title: words.title,
  linkVersion: 1,
  controls: [
    temperatureControl('temp', controls.temp),
    crackControl('crack'),
    numberControl('rpm', controls.rpm, speed, SPEED),
    requiredControl('required'),
    circuitControl('circuit'),
    testPointControl('point'),
    fluidControl('fluid'),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    outcome: ({ now, clutch, commands }) => {
      const { lineKpa } = now.value;
      const { kPa } = clutch.value;
      const option =
        kPa >= NOTICEABLE * before
          ? 'same'
          : lineKpa < NOTICEABLE * commands.value.lineKpa
            ? 'line'
            : kPa >= needed.idle.kPa && kPa < needed['take-off'].kPa
              ? 'clutch'
              : 'gone';
      return {
        option,
        words: (system) => {
          const print = printer(system);
          return words.outcome({
            ...needs(system),
            line: print(lineKpa, pressure),
            clutch: print(kPa, pressure),
            before: print(before, pressure),
          });
        },
      };
    },
  },
  says: (model, system, inTask) => {
    const { now, clutch, need, holds, commands } = model;
    const print = printer(system);
    const [has, least] = formatApart(clutch.value.kPa, need.value.kPa, pressure, system);
    const carries = print(clutch.value.holdsNm, torque);
    const asked = print(need.value.torqueNm, torque);
    const slips = carries === asked ? says.justSlips : says.slips;
    const sentences = [(holds.value ? says.holds : slips)({ has, needs: least, carries, asked })];
    if (!now.value.lineAtCommand) {
      sentences.push(
        says.lineShort({
          line: print(now.value.lineKpa, pressure),
          command: print(commands.value.lineKpa, pressure),
        }),
      );
    }
    if (!inTask) sentences.push(limitOf(model, system));
    return sentences.join(' ');
  },
};
