export const words = {
  tasks: {
    smooth: {
      words:
        'The customer feels a shudder as the car pulls away, and the log is smooth. Three items share the line. Give the line more until the log swings as often as the turbine does.',
      hint: 'Two readings to a swing are the bare edge: where they fall decides whether you see it at all. Then take one step more.',
      after: (p: { swings: string; slow: string; seen: string }) =>
        `A smooth log is no smooth clutch. At ${p.swings} readings a second each one met the swing in the same place. At ${p.slow} a second it even looked slow: ${p.seen} swings a second. It takes more than two readings to a swing, and four or five to see its shape.`,
    },
    plug: {
      words: (p: { lasts: string }) =>
        `The plug of the turbine sensor opens once, for ${p.lasts}. Find the slowest line at which no log can miss it, wherever the rows fall.`,
      hint: 'At least one row has to fall in it. So how far apart may two rows be?',
      after: (p: { lasts: string; rate: string; chance: string }) =>
        `${p.lasts} takes ${p.rate} readings a second: one for each stretch of that length. At half the rate ${p.chance} of the logs have it, and the others call the wiring good. One reading of zero between two high ones is a sensor or its plug, since no shaft stops and comes back so fast.`,
    },
    list: {
      words:
        'A line of 60 values a second, and everything is on the list. You want to know how long the engagement took and at what degrees, with a row at least every 0.10 s. What stays on?',
      hint: 'You need the start, the end and the degrees. Count how many items 60 values can read ten times a second.',
      after: (p: { most: string; all: string }) =>
        `Up to ${p.most} items, and three of them are range, turbine speed and fluid temperature. Output speed shows that the car stood, the command shows that pressure was asked for, and engine speed shows what the turbine ran with. The rest is for another log. With everything on, the stop was known to within ${p.all}.`,
    },
  },
  reached: {
    swings: (p: { rate: string; seen: string }) =>
      `At ${p.rate} readings a second the log draws ${p.seen} swings a second.`,
    flat: (p: { rate: string }) => `At ${p.rate} readings a second the log draws no swing at all.`,
    edge: (p: { rate: string }) =>
      `${p.rate} readings a second are just two to a swing. Move the moment of Drive and see.`,
    seen: (p: { rate: string; share: string }) =>
      `At ${p.rate} readings a second ${p.share} of all logs have it.`,
    more: (p: { rate: string }) =>
      `At ${p.rate} readings a second no log misses it, and a slower line does it too.`,
    missing: (p: { items: string }) => `Not on the list: ${p.items}.`,
    slow: (p: { every: string }) => `All that it takes is on, with a row every ${p.every}.`,
  },
};
