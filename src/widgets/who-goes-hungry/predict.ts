import { printer } from '../../quantity/print.ts';
import { flow, percent, pressure, temperature } from '../../quantity/quantities.ts';
import type { PredictSpec } from '../../simulation/sim-spec.ts';
import { COMMANDS, plantWith, readingOf, type HungryGivens, type HungryModel } from './model.ts';
import { COLD_C, HOT_C, IDLE_RPM } from './ranges.ts';

const start: HungryGivens = { rpm: IDLE_RPM, temp: COLD_C, pump: 20, bore: 0, filter: 1 };
const end = { temp: HOT_C };

const plant = plantWith(start);
const cold = readingOf(plant, COLD_C, IDLE_RPM);
const hot = readingOf(plant, HOT_C, IDLE_RPM);
/** A twentieth: less than a shop gauge would show anybody. */
const NOTICEABLE = 0.95;

export const predict: PredictSpec<HungryGivens, HungryModel> = {
  question: (system) => {
    const print = printer(system);
    return `A pump worn by ${print(start.pump, percent)}, engine at idle in gear. At ${print(COLD_C, temperature)} the pump has ${print(cold.flows.leftOver, flow)} to spare for converter, cooler and lubrication. Warm it to ${print(HOT_C, temperature)}, where it can no longer feed everybody. Who goes short?`;
  },
  options: [
    {
      id: 'clutch-first',
      words: 'The clutch first. It is the last on the way.',
      why: (system) => {
        const print = printer(system);
        return `Last on the way does not mean last served. The clutch is commanded ${print(COMMANDS.clutch, pressure)} and the line ${print(COMMANDS.line, pressure)}. Its valve opens wider as the line sags, so at ${print(hot.line, pressure)} of line it still has ${print(hot.clutch, pressure)}.`;
      },
    },
    {
      id: 'all-alike',
      words: 'Everybody loses the same share.',
      why: (system) => {
        const print = printer(system);
        return `Nobody shares here. The regulator gives away only what the line does not need, so whoever lives on that is cut off first: from ${print(cold.flows.leftOver, flow)} to nothing. The clutch lost ${print(cold.clutch - hot.clutch, pressure)} meanwhile.`;
      },
    },
    {
      id: 'converter-first',
      words: 'Converter, cooler and lubrication first, then the line. The clutch hardly notices.',
      why: (system) => {
        const print = printer(system);
        return `The regulator feeds the line first and sends on what is over. When it runs short it shuts that port: nothing more for converter, cooler and lubrication. Only then does the line fall, to ${print(hot.line, pressure)}. The clutch, commanded ${print(COMMANDS.clutch, pressure)}, still has ${print(hot.clutch, pressure)}. The car drives, with a converter and bushings that run short at idle.`;
      },
    },
    {
      id: 'nobody',
      words: 'Nobody. The regulator holds the line where it should be.',
      why: (system) => {
        const print = printer(system);
        return `A regulator can only let fluid go. It cannot make any. Once its port is shut and the leaks still want more, the line falls: ${print(hot.line, pressure)} where ${print(COMMANDS.line, pressure)} is asked.`;
      },
    },
  ],
  start,
  end,
  runLabel: 'Run it hot',
  outcome: ({ now }) => {
    const { line, clutch, flows } = now.value;
    const clutchLoss = clutch / cold.clutch;
    const lineLoss = line / cold.line;
    const option =
      lineLoss >= NOTICEABLE && flows.leftOver > 0
        ? 'nobody'
        : clutchLoss < lineLoss
          ? 'clutch-first'
          : flows.leftOver > 0
            ? 'all-alike'
            : 'converter-first';
    return {
      option,
      words: (system) => {
        const print = printer(system);
        return `Left for converter, cooler and lubrication: ${flows.leftOver === 0 ? 'nothing' : print(flows.leftOver, flow)}, down from ${print(cold.flows.leftOver, flow)}. Line ${print(line, pressure)} of ${print(cold.line, pressure)}. Clutch ${print(clutch, pressure)}, down from ${print(cold.clutch, pressure)}.`;
      },
    };
  },
};
