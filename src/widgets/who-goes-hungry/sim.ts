import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { faultSpan } from '../../engine/index.ts';
import { hairs } from '../../quantity/hairs/hairs.ts';
import { multiple } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { flow, length, percent, pressure, speed, temperature } from '../../quantity/quantities.ts';
import { numberControl, temperatureControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import {
  carWith,
  COMMANDS,
  HEALTHY,
  heldBack,
  IDLE_RPM,
  readingAt,
  SPEED,
  type PumpGivens,
  type PumpModel,
} from './model.ts';
import { words } from './words.en.ts';

/** [% of the way from a healthy pump to the worst] */
export const WEAR = { min: 0, max: 100, step: 1 } as const;
/** Wear gap of the regulator bore [mm], and resistance of the filter against a clean one, up to the worst. */
export const BORE = { min: 0, max: faultSpan('regulatorBore').worst, step: 0.01 };
export const FILTER = { min: 1, max: faultSpan('filter').worst, step: 1 };
/** A twentieth: less than a shop gauge would show anybody. */
const NOTICEABLE = 0.95;

const { beside, controls, says, outcome } = words;
const start: PumpGivens = { ...HEALTHY, rpm: IDLE_RPM, temp: COLD_C, pump: 20 };
const worn = carWith(start);
const cold = readingAt(worn, COLD_C, IDLE_RPM);
const hot = readingAt(worn, HOT_C, IDLE_RPM);

const { options, ...predict } = told(words.predict, (system) => {
  const print = printer(system);
  return {
    cold: print(COLD_C, temperature),
    hot: print(HOT_C, temperature),
    wear: print(start.pump, percent),
    leftCold: print(cold.leftOverLmin, flow),
    lineCommand: print(COMMANDS.line, pressure),
    clutchCommand: print(COMMANDS.clutch, pressure),
    lineHot: print(hot.lineKpa, pressure),
    clutchHot: print(hot.clutches.forward.kPa, pressure),
    clutchLost: print(cold.clutches.forward.kPa - hot.clutches.forward.kPa, pressure),
  };
});

export const sim: SimSpec<PumpGivens, PumpModel> = {
  id: 'who-goes-hungry',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('rpm', controls.rpm, speed, SPEED),
    temperatureControl('temp', controls.temp),
    numberControl('pump', controls.pump, percent, WEAR, (value) =>
      value === WEAR.min ? beside.healthy : value === WEAR.max ? beside.worst : '',
    ),
    numberControl('bore', controls.bore, length, BORE, (mm) =>
      mm === BORE.min ? beside.healthy : hairs(mm),
    ),
    numberControl('filter', controls.filter, multiple, FILTER, (value) =>
      value === FILTER.min ? beside.clean : beside.harder,
    ),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end: { temp: HOT_C },
    outcome: ({ now }) => {
      const { lineKpa, leftOverLmin, clutches } = now.value;
      const clutchShare = clutches.forward.kPa / cold.clutches.forward.kPa;
      const lineShare = lineKpa / cold.lineKpa;
      const option =
        lineShare >= NOTICEABLE && leftOverLmin > 0
          ? 'nobody'
          : clutchShare < lineShare
            ? 'clutch-first'
            : leftOverLmin > 0
              ? 'all-alike'
              : 'converter-first';
      return {
        option,
        words: (system) => {
          const print = printer(system);
          return (leftOverLmin === 0 ? outcome.nothing : outcome.some)({
            left: print(leftOverLmin, flow),
            leftBefore: print(cold.leftOverLmin, flow),
            line: print(lineKpa, pressure),
            lineBefore: print(cold.lineKpa, pressure),
            clutch: print(clutches.forward.kPa, pressure),
            clutchBefore: print(cold.clutches.forward.kPa, pressure),
          });
        },
      };
    },
  },
  says: ({ now, healthy, fed }, system) => {
    const print = printer(system);
    const { lineKpa, lineAtCommand, leftOverLmin, intakeLmin, fullLmin, clutches } = now.value;
    const line = print(lineKpa, pressure);
    const sentences: string[] = [];
    if (heldBack(now.value)) {
      sentences.push(says.filter({ draws: print(intakeLmin, flow), full: print(fullLmin, flow) }));
    }
    if (lineAtCommand) {
      const left = says.left[fed.value.leftOver];
      sentences.push(
        says.atCommand({ line }),
        typeof left === 'string'
          ? left
          : left({
              left: print(leftOverLmin, flow),
              healthy: print(healthy.value.leftOverLmin, flow),
            }),
      );
    } else {
      const { kPa } = clutches.forward;
      const share = print((100 * kPa) / COMMANDS.clutch, percent);
      sentences.push(
        says.down({ line }),
        says.clutch[fed.value.clutch]({ has: print(kPa, pressure), share }),
      );
    }
    return sentences.join(' ');
  },
};
