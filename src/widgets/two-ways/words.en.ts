import { words as names } from '../../car/names/words.en.ts';

const { reverse, neutral, drive } = names.ranges;

interface Range {
  range: string;
}

export const words = {
  title: 'Who can do what?',
  /** By their full names; nothing is fed in P. */
  ranges: { R: reverse, N: neutral, D: drive },
  controls: {
    range: 'Lever or selector',
    ranges: { P: { words: 'P' }, R: { words: 'R' }, N: { words: 'N' }, D: { words: 'D' } },
    fault: 'What is wrong',
    faults: {
      none: { words: 'Nothing' },
      slip: { words: 'Slip seen', note: 'fail-safe is in force' },
      misSet: { words: 'Cable mis-set' },
      noPower: { words: 'No power', note: 'to the controller' },
    },
    failSafe: 'By cable, when the controller gives up',
    failSafes: {
      neutral: { words: 'Goes to Neutral' },
      'default-gear': { words: 'Holds one gear' },
    },
    car: 'The car',
    stands: 'Stands',
    rolls: 'Rolls',
    feed: 'Port of the manual valve, cable mis-set',
    wideOpen: 'wide open',
    shutOff: (p: { shut: string }) => `open, ${p.shut} shut off`,
  },
  predict: {
    question: 'Two cars slip hot in Drive, and the controllers give up. Which ends up in Park?',
    options: {
      both: {
        words: 'Both. The code is the same, so fail-safe is the same.',
        why: 'Same slip, same code, but not the same reach. A pawl on a cable is moved by a hand or not at all.',
      },
      electronic: {
        words: 'The one by wire only. The other drops to Neutral.',
        why: 'Both let the clutch go. By wire the controller can also let the oil out of the park actuator, and at a standstill it does. By cable the lever still says Drive; the pawl is out, and the car can roll.',
      },
      neither: {
        words: 'Neither. Only a driver can select Park.',
        why: 'True of the car with the cable. By wire the selector is only a switch. What moves the pawl is the controller, and it does not have to wait for the switch.',
      },
    },
    runLabel: 'Let them slip',
  },
  outcome: {
    wire: {
      park: 'By wire: Park, selected by the controller.',
      out: 'By wire: no Park.',
    },
    cable: {
      park: 'By cable: Park.',
      out: 'By cable: clutch let go, lever in Drive, pawl out.',
    },
  },
  says: {
    wire: {
      park: 'By wire: in Park.',
      none: 'By wire: feeds no clutch, free to roll.',
      ratchets: 'By wire: feeds no clutch, and the pawl ratchets until the car is slow.',
      feeds: (p: Range) => `By wire: feeds ${p.range}.`,
    },
    cable: {
      park: 'By cable: in Park.',
      none: 'By cable: feeds no clutch, free to roll.',
      feeds: (p: Range) => `By cable: feeds ${p.range}.`,
    },
    port: (p: { cold: string; hot: string }) =>
      `Its clutch at idle has ${p.cold} cold, ${p.hot} hot.`,
  },
  which: 'Which one to see',
  wire: { name: 'By wire', kind: '(electronic)' },
  cable: { name: 'By cable', kind: '(mechanical)' },
};
