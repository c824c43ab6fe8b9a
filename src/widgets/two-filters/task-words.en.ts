export const words = {
  tasks: {
    fast: {
      words: (p: { frost: string }) =>
        `Frost, ${p.frost}, and the unknown part is in. Find the highest engine speed at which its pump still gets all it asks for.`,
      hint: 'Bring its line down until it just comes off the limit at this temperature.',
      after: (p: { unknown: string; maker: string; frost: string }) =>
        `At ${p.frost} it starves above ${p.unknown}, the maker’s part only above ${p.maker}. What a filter costs goes with the flow: half the media, half the speed. At idle in the bay you would see nothing.`,
    },
    equal: {
      words: (p: { shop: string; seconds: string; amount: string }) =>
        `A colleague poured ${p.amount} through the maker’s part at ${p.shop}: ${p.seconds}. “The unknown part took just as long, so they are alike.” But the fluid had warmed meanwhile. How warm must it have been?`,
      hint: 'Warm the fluid until the unknown part takes those seconds.',
      after: (p: { shop: string; warm: string; seconds: string; same: string }) =>
        `At about ${p.warm} half the media takes ${p.seconds} too. At ${p.shop} it would have taken ${p.same}. Poured equally warm, the one takes twice as long as the other at any temperature. So only the two times together tell, and only with equal fluid.`,
    },
    plugged: {
      words: (p: { most: string }) =>
        `The unknown part has half the pleats. Poured beside the filter that came out of the pan, equally warm, it took no longer than ${p.most} times as long. How can that be? Find a state of the old filter that does it, with neither more than a fifth quicker.`,
      hint: 'The old filter has not been washed.',
      after: (p: { from: string; to: string }) =>
        `With ${p.from} to ${p.to} of its media left the old filter pours like the bad new one. Beside a plugged filter a bad one passes. So count pleats, measure media, and pour beside a new part of the maker’s.`,
    },
  },
  reached: {
    lost: (p: { speed: string; lost: string; limit: string }) =>
      `At ${p.speed} it would take ${p.lost}, and ${p.limit} is all there is.`,
    pour: (p: { temp: string; seconds: string }) => `At ${p.temp} it takes ${p.seconds}.`,
    ratio: (p: { old: string; unknown: string; ratio: string }) =>
      `Old filter ${p.old}, unknown part ${p.unknown}: ${p.ratio} times as long.`,
  },
};
