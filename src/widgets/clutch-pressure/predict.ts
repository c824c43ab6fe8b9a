import { printer } from '../../quantity/print.ts';
import { pressure, temperature, length } from '../../quantity/quantities.ts';
import { hairs } from '../../quantity/hairs.ts';
import type { PredictSpec } from '../../simulation/sim-spec.ts';
import { needed } from './needed.ts';
import { makeClutchPressure, type PressureGivens, type PressureModel } from './model.ts';
import { COLD_C } from './ranges.ts';

/**
 * Two hairs at 100 °C, because there the three usual ideas come apart: the pump still keeps the
 * line at its command, the clutch has lost over a quarter of its pressure, and what is left is
 * enough for one job and not for the other. At 110 °C the line gives way as well, and at 0.25 mm the
 * lesson's own table would have told the answer.
 */
const start: Partial<PressureGivens> = {
  temp: COLD_C,
  crack: 0.16,
  rpm: 700,
  required: 'take-off',
  circuit: 'forward',
  point: 'idle',
  fluid: 'low-viscosity',
};
const end = { temp: 100 };

/** The numbers the explanations name, from the model at the two states themselves. */
const at = (state: Partial<PressureGivens>) => {
  const model = makeClutchPressure();
  model.apply(start);
  model.apply(state);
  return model.now.value;
};
const cold = at({});
const hot = at(end);

/** A twentieth: less than a shop gauge would show anybody. */
const NOTICEABLE = 0.95;

export const predict: PredictSpec<PressureGivens, PressureModel> = {
  question: (system) => {
    const print = printer(system);
    return `A crack ${hairs(0.16)} wide, ${print(0.16, length)}. The car idles in gear. At ${print(COLD_C, temperature)} the clutch has ${print(cold.clutch, pressure)} and holds anything you ask. Warm the fluid to ${print(end.temp, temperature)}. Clutch pressure:`;
  },
  options: [
    {
      id: 'same',
      words: 'Stays as it was, because the regulator sets it.',
      why: (system) => {
        const print = printer(system);
        return `The regulator sets line pressure, and it did: ${print(hot.line, pressure)} cold and hot. But the clutch sits behind the feed hole. What the crack takes has to come through that hole first, and pressure is lost on the way.`;
      },
    },
    {
      id: 'line',
      words: 'Falls, because line pressure falls with it.',
      why: (system) => {
        const print = printer(system);
        return `Line pressure did not fall: it still reads ${print(hot.line, pressure)}, and the pump has fluid to spare. A gauge on the line would show you nothing wrong. The loss is between the feed hole and the clutch.`;
      },
    },
    {
      id: 'clutch',
      words: 'Falls, with the line still up: it stands, but cannot take off.',
      why: (system) => {
        const print = printer(system);
        return `Hot fluid runs through the crack faster than the feed hole can bring more. Line ${print(hot.line, pressure)}, clutch ${print(hot.clutch, pressure)}. Standing in gear asks for ${print(needed.idle.pressure, pressure)}, taking off for ${print(needed['take-off'].pressure, pressure)}. So the car sits in gear and seems fine until you ask it to move.`;
      },
    },
    {
      id: 'gone',
      words: 'Falls so far that it slips even standing in gear.',
      why: (system) => {
        const print = printer(system);
        return `A fair guess for a wider crack. This one leaves ${print(hot.clutch, pressure)}, and standing in gear asks for no more than ${print(needed.idle.pressure, pressure)}. Idle torque is small; that is why such a car passes a check at idle.`;
      },
    },
  ],
  start,
  end,
  runLabel: 'Run it hot',
  outcome: ({ now, cold: before, commands }) => {
    const { clutch, line } = now.value;
    const option =
      clutch >= NOTICEABLE * before.value.clutch
        ? 'same'
        : line < NOTICEABLE * commands.value.line
          ? 'line'
          : clutch >= needed.idle.pressure && clutch < needed['take-off'].pressure
            ? 'clutch'
            : 'gone';
    return {
      option,
      words: (system) => {
        const print = printer(system);
        return `Line ${print(line, pressure)}, as before. Clutch ${print(clutch, pressure)}, down from ${print(before.value.clutch, pressure)}. Needed to stand ${print(needed.idle.pressure, pressure)}, to take off ${print(needed['take-off'].pressure, pressure)}.`;
      },
    };
  },
};
