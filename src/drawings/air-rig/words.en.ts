interface Labels {
  supply: string;
  hole: string;
  held: string;
}
/** A label of two lines is a list of two; '*' makes a line strong. */
export const words = {
  title: 'Air on a circuit',
  supply: 'supply',
  hole: 'hole',
  held: 'held',
  shut: 'shut',
  nozzle: ['rubber', 'nozzle'],
  port: 'port',
  rings: 'rings',
  pistonSeal: 'piston seal',
  plates: 'plates',
  shaft: 'shaft',
  seal: 'transfer seal',
  plate: 'blank plate',
  describe: {
    rig: (p: Labels) =>
      `Air comes from a regulator with a gauge, ${p.supply}, by way of a valve and a hole of ${p.hole}. Behind the hole stands a second gauge, and then a rubber nozzle.`,
    parts: {
      circuit:
        'The nozzle is held on the passage in the case. It leads to a turning shaft between two sealing rings, through the shaft into the drum, and behind the piston with its seal. One port of the passage goes out through the case.',
      seal: 'The nozzle is held on one end of the transfer seal, which stands on a blank plate.',
    },
    shut: 'The valve is shut.',
    held: (p: Labels) => `The second gauge holds ${p.held} of the supply.`,
    applied: 'The piston has gone over against the plates.',
    back: 'The spring still holds the piston back.',
    tight: 'Nothing gets away.',
    leaks: {
      rings: 'Most of what gets away comes out along the shaft, past the rings.',
      pistonSeal: 'Most of what gets away comes out in the drum, past the piston seal.',
      openPort: 'Most of what gets away comes out at the open port in the case.',
      transferSeal: 'What gets away comes out at the split.',
    },
    wet: 'A little fluid was put in first, so bubbles show where it comes out.',
  },
};
