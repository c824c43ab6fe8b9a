import { format } from '../../quantity/print.ts';
import { percent, roadSpeed } from '../../quantity/quantities.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import { FEED, type WaysGivens, type WaysModel } from './model.ts';
import { says } from './words.ts';

const feedWords = (value: number): string =>
  value === FEED.max ? 'wide open' : `open, ${format(FEED.max - value, percent, 'si')} shut off`;

const controls: readonly ControlSpec<WaysGivens>[] = [
  {
    kind: 'choice',
    key: 'range',
    label: 'Lever or selector',
    options: [
      { value: 'P', words: 'P' },
      { value: 'R', words: 'R' },
      { value: 'N', words: 'N' },
      { value: 'D', words: 'D' },
    ],
  },
  {
    kind: 'choice',
    key: 'fault',
    label: 'What is wrong',
    options: [
      { value: 'none', words: 'Nothing' },
      { value: 'slip', words: 'Slip seen', note: 'fail-safe is in force' },
      { value: 'misSet', words: 'Cable mis-set' },
      { value: 'noPower', words: 'No power', note: 'to the controller' },
    ],
  },
  {
    kind: 'choice',
    key: 'failSafe',
    label: 'The box by cable, when its controller gives up',
    options: [
      { value: 'neutral', words: 'Goes to Neutral' },
      { value: 'default-gear', words: 'Holds one gear' },
    ],
  },
  {
    kind: 'choice',
    key: 'car',
    label: 'The car',
    options: [
      { value: 'standing', words: 'Stands' },
      { value: 'rolling', words: 'Rolls', note: (system) => format(20, roadSpeed, system) },
    ],
  },
  {
    kind: 'number',
    key: 'feed',
    label: 'Port of the manual valve, cable mis-set',
    quantity: percent,
    ...FEED,
    words: feedWords,
  },
];

export const sim: SimSpec<WaysGivens, WaysModel> = {
  id: 'two-ways',
  title: 'Who can do what?',
  linkVersion: 1,
  controls,
  predict: {
    question:
      'Two cars stand in Drive with hot fluid, one with range selection by wire, one with a lever and cable. In both the clutch slips, the controller sees it, and raising the pressure does not help. Which car ends up in Park?',
    options: [
      {
        id: 'both',
        words: 'Both. The code is the same, so fail-safe is the same.',
        why: 'Same slip, same code, but not the same reach. A pawl that hangs on a cable is moved by a hand or not at all.',
      },
      {
        id: 'electronic',
        words: 'The one by wire only. The other drops to Neutral.',
        why: 'Both let the clutch go. By wire the controller can also let the oil out of the park actuator, and at a standstill it does. By cable the lever still says Drive; the pawl is out, and the car can roll.',
      },
      {
        id: 'neither',
        words: 'Neither. Only a driver can select Park.',
        why: 'True of the car with the cable. By wire the selector is only a switch. What moves the pawl is the controller, and it does not have to wait for the switch.',
      },
    ],
    start: { range: 'D', fault: 'none', failSafe: 'neutral', car: 'standing', feed: 50 },
    end: { fault: 'slip' },
    runLabel: 'Let them slip',
    outcome: ({ parked }) => {
      const { electronic, mechanical } = parked.value;
      const option = electronic ? (mechanical ? 'both' : 'electronic') : 'neither';
      return {
        option,
        words: `By wire: ${electronic ? 'Park, selected by the controller' : 'no Park'}. By cable: ${mechanical ? 'Park' : 'clutch let go, lever in Drive, pawl out'}.`,
      };
    },
  },
  says,
};
