interface Ends {
  cold: string;
  hot: string;
}
interface Clutch {
  has: string;
  share: string;
}

const converterAndCooler = 'converter, cooler and lubrication';

export const words = {
  title: 'Who runs short first?',
  controls: {
    rpm: 'Engine, turns the pump',
    temp: 'Fluid',
    pump: 'Pump wear',
    bore: 'Regulator bore, worn by',
    filter: 'Filter, against a clean one',
  },
  beside: {
    healthy: 'healthy',
    worst: 'the worst offered',
    clean: 'clean',
    harder: 'as hard to draw through',
  },
  predict: {
    question: (p: Ends & { wear: string; leftCold: string }) =>
      `A pump worn by ${p.wear}, engine at idle in gear. At ${p.cold} the pump has ${p.leftCold} to spare for ${converterAndCooler}. Warm it to ${p.hot}, where it can no longer feed everybody. Who runs short?`,
    options: {
      'clutch-first': {
        words: 'The clutch first. It is the last on the way.',
        why: (p: {
          clutchCommand: string;
          lineCommand: string;
          lineHot: string;
          clutchHot: string;
        }) =>
          `Last on the way does not mean last served. The clutch is commanded ${p.clutchCommand} and the line ${p.lineCommand}. Its valve opens wider as the line sags, so at ${p.lineHot} of line it still has ${p.clutchHot}.`,
      },
      'all-alike': {
        words: 'Everybody loses the same share.',
        why: (p: { leftCold: string; clutchLost: string }) =>
          `Nobody shares here. The regulator gives away only what the line does not need, so whoever lives on that is cut off first: from ${p.leftCold} to nothing. The clutch lost ${p.clutchLost} meanwhile.`,
      },
      'converter-first': {
        words: 'Converter, cooler and lubrication first, then the line. The clutch hardly notices.',
        why: (p: { lineHot: string; clutchCommand: string; clutchHot: string }) =>
          `The regulator feeds the line first and sends on what is over. When it runs short it shuts that port: nothing more for ${converterAndCooler}. Only then does the line fall, to ${p.lineHot}. The clutch, commanded ${p.clutchCommand}, still has ${p.clutchHot}. The car drives, with a converter and bushings that run short at idle.`,
      },
      nobody: {
        words: 'Nobody. The regulator holds the line where it should be.',
        why: (p: { lineHot: string; lineCommand: string }) =>
          `A regulator can only let fluid go. It cannot make any. Once its port is shut and the leaks still want more, the line falls: ${p.lineHot} where ${p.lineCommand} is asked.`,
      },
    },
    runLabel: 'Run it hot',
  },
  outcome: {
    nothing: (p: {
      leftBefore: string;
      line: string;
      lineBefore: string;
      clutch: string;
      clutchBefore: string;
    }) =>
      `Left for ${converterAndCooler}: nothing, down from ${p.leftBefore}. Line ${p.line} of ${p.lineBefore}. Clutch ${p.clutch}, down from ${p.clutchBefore}.`,
    some: (p: {
      left: string;
      leftBefore: string;
      line: string;
      lineBefore: string;
      clutch: string;
      clutchBefore: string;
    }) =>
      `Left for ${converterAndCooler}: ${p.left}, from ${p.leftBefore}. Line ${p.line} of ${p.lineBefore}. Clutch ${p.clutch}, from ${p.clutchBefore}.`,
  },
  says: {
    filter: (p: { draws: string; full: string }) =>
      `The filter lets in ${p.draws} of the ${p.full} the pump could move.`,
    atCommand: (p: { line: string }) => `Line at its command, ${p.line}.`,
    left: {
      fed: (p: { left: string }) =>
        `Nobody runs short: ${p.left} is left for ${converterAndCooler}.`,
      short: (p: { left: string; healthy: string }) =>
        `Converter, cooler and lubrication are short: ${p.left}, where a healthy transmission leaves them ${p.healthy}.`,
      starved: 'Converter, cooler and lubrication get next to nothing. The line is about to fall.',
    },
    down: (p: { line: string }) =>
      `Converter, cooler and lubrication get nothing. Line down to ${p.line}.`,
    clutch: {
      fed: (p: Clutch) =>
        `Clutch ${p.has} (${p.share} of command), still enough for a firm take-off.`,
      short: (p: Clutch) =>
        `Clutch ${p.has} (${p.share} of command), enough to stand in gear, too little to take off firmly.`,
      starved: (p: Clutch) =>
        `Clutch ${p.has} (${p.share} of command), too little even to stand in gear.`,
    },
  },
  line: {
    name: 'Line pressure against engine speed',
    cold: 'Cold, the line has its command at every speed.',
    inTask: 'The more turns, the more flow to feed it.',
    fedFrom: {
      always: 'The line has its command at every speed offered.',
      never: 'No speed offered brings the line to its command.',
      at: (p: { speed: string }) => `The line has its command from ${p.speed} up.`,
    },
    x: 'Engine speed',
    y: 'Line pressure',
    band: 'clutch command',
    corner: (p: { speed: string }) => `fed from ${p.speed}`,
    now: 'now',
  },
};
