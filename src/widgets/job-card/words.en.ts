import type { Step } from '../../car/back-together.ts';

interface Three {
  ball: string;
  bridgeCold: string;
  bridgeHot: string;
  lipCold: string;
  lipHot: string;
  right: string;
  hot: string;
}

export const words = {
  title: 'The job card that says no',
  halves: { inside: 'Before the body goes on', after: 'From the body on' },
  controls: { strict: 'The card', refuses: 'refuses', lets: 'lets it pass' },
  steps: {
    clean: 'Clean',
    lip: 'Piston lip',
    rings: 'Sealing rings',
    drums: 'Drums in',
    air: 'Air',
    balls: 'Check balls',
    bridge: 'Bridge',
    body: 'Valve body on',
    pan: 'Filter and pan',
    fill: 'Fill',
    level: 'Level',
    relearn: 'Relearn',
    drive: 'First drive',
  } satisfies Record<Step, string>,
  proofs: {
    clean: 'passages open, cloth clean',
    lip: 'felt all around, turned in by hand',
    rings: 'gap measured in their own bore',
    drums: 'snap rings in, end play read',
    air: 'each circuit beside its sister',
    balls: 'counted against the maker’s drawing',
    bridge: 'pressed down by hand, does not rock',
    body: 'flush by hand, drawn down in sequence',
    pan: 'neck seal pushed home and tugged',
    fill: 'engine on, every range, topped up',
    level: 'closed in the maker’s window',
    relearn: 'reset what the maker says, no more',
    drive: 'to the heat of the complaint',
  } satisfies Record<Step, string>,
  refuse: {
    clean: {},
    lip: { clean: 'Dirt in the bore cuts the new lip, and the piston hides it.' },
    rings: { clean: 'Grit in the bore cuts the rings, and they hide it.' },
    drums: {
      lip: 'With the drum in the case nobody can feel the lip any more.',
      rings: 'With the drum in the case nobody can get at a ring gap any more.',
    },
    air: {
      drums: 'Air on a drum without its snap ring throws the piston at you.',
    },
    balls: { clean: 'A ball on a chip does not seat, and the plate hides both.' },
    bridge: { air: 'The bridge covers the ports that the air nozzle has to sit on.' },
    body: {
      air: 'The body covers the ports, and no nozzle gets to them any more.',
      balls: 'Under the body nobody can count the balls any more.',
      bridge:
        'Under the body nobody can feel the bridge, and a bolt pulls it crooked or cracks it.',
    },
    pan: { body: 'Behind the pan nobody sees whether the body lies flush.' },
    fill: { pan: 'What goes in runs out on the floor.' },
    level: {
      fill: 'The converter and the clutches have not taken their share yet, so the mark shows more than there is.',
    },
    relearn: { level: 'A controller that learns on a wrong level learns the wrong fill times.' },
    drive: { relearn: 'It would drive on what the controller learned of the old leak.' },
  } satisfies Record<Step, Partial<Record<Step, string>>>,
  line: (p: { number: string; step: string }) => `${p.number}. ${p.step}`,
  says: {
    refused: (p: { step: string; missing: string }) => `${p.step}: refused. First: ${p.missing}.`,
    undone: (p: { step: string; lines: string }) =>
      `Back to “${p.step}”: ${p.lines} lines come apart again.`,
    empty: 'Nothing is signed yet.',
    signed: (p: { signed: string; of: string }) => `${p.signed} of ${p.of} lines signed.`,
    skipped: (p: { steps: string }) => `Hidden without its proof: ${p.steps}.`,
    pulls: 'Around the block, cold: pulls. Hot: pulls.',
    slipsHot: 'Around the block, cold: pulls. Hot: slips.',
    slips: 'Around the block, cold: slips. Hot: slips.',
    silent: 'The gauges and the stick read as if nothing had been left out.',
  },
  picture: {
    whole: 'The job card, and what the car reads',
    forward: 'Forward tap, Drive',
    reverse: 'Reverse tap',
    cold: 'cold',
    hot: 'hot',
    of: (p: { read: string; right: string }) => `${p.read} of ${p.right}`,
    air: 'Air, forward',
    noAir: 'not put on yet',
    holds: (p: { held: string; sister: string }) => `holds ${p.held}, its sister ${p.sister}`,
    stick: 'Stick',
    middle: 'in its window, at the middle',
    over: (p: { mm: string }) => `in its window, ${p.mm} over the middle`,
    none: 'not driven yet',
  },
  predict: {
    question: (p: Three) =>
      `Three cars left the shop with one line skipped on each. Car A lacks a check ball, in car B the bridge stands ${p.right} off, and in car C a piston lip is nicked. Around the block, cold: which pull?`,
    options: {
      none: {
        words: 'None. Work gone wrong shows at once.',
        why: (p: Three) =>
          `The missing ball showed at once, with ${p.ball} at the forward tap. The bridge read ${p.bridgeCold} and the lip ${p.lipCold} there, cold, and both cars pulled.`,
      },
      two: {
        words: 'B and C. Only the ball shows cold.',
        why: (p: Three) =>
          `A ball left out leaves a hole, and a hole leaks cold. The bridge and the lip leave thin gaps. Cold they read ${p.bridgeCold} and ${p.lipCold}, hot ${p.bridgeHot} and ${p.lipHot}.`,
      },
      all: {
        words: 'All three. Cold fluid hides everything.',
        why: (p: Three) =>
          `Cold fluid hides gaps. Through a hole it jets nearly as it does hot: the forward tap of car A has ${p.ball}, and it slips at the first corner.`,
      },
    },
    runLabel: 'Drive them',
  },
  outcome: (p: Three) =>
    `Around the block, cold, A slipped, and B and C pulled. At ${p.hot} B and C slip too: ${p.bridgeHot} and ${p.lipHot} at the forward tap. The picture shows car B.`,
};
