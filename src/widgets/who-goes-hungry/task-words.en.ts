export const words = {
  tasks: {
    speed: {
      words: (p: { wornLine: string; lineCommand: string }) =>
        `A worn pump, hot, at idle: the line has ${p.wornLine} of ${p.lineCommand}. Bring the engine up to the lowest speed at which the pump feeds the line again.`,
      hint: (p: { step: string }) =>
        `Go up in steps of ${p.step}. Watch for the line to stop rising, and for something to be left over.`,
      after: (p: {
        fed: string;
        slipIdle: string;
        slipFast: string;
        fast: string;
        shareIdle: string;
        shareFast: string;
      }) =>
        `From ${p.fed} up. What slips back through the pump goes with pressure, not with speed: ${p.slipIdle} at idle, ${p.slipFast} at ${p.fast} with the line full. At idle that is ${p.shareIdle} of what it draws; fast, ${p.shareFast}. So wear shows hot at idle and hides as you rev it.`,
    },
    runDry: {
      words: (p: { near: string }) =>
        `A good transmission now, at idle. Warm it until nothing is left for converter, cooler and lubrication, and stop within ${p.near} past that point.`,
      hint: 'Watch the last block of the right-hand column. It goes before the line moves.',
      after: (p: { dry: string; clutchDry: string }) =>
        `From ${p.dry} on even a good pump at idle gives nothing away. The line is just starting to sag and the clutch still has ${p.clutchDry}. Wear does not change who goes first. It makes it happen cooler.`,
    },
    carA: {
      words: (p: {
        aLine: string;
        aHotLeft: string;
        fast: string;
        aColdLeft: string;
        healthyColdLeft: string;
      }) =>
        `Car A. Hot at idle all is well: line ${p.aLine}, ${p.aHotLeft} to the cooler. Cold at ${p.fast} the pump howls and only ${p.aColdLeft} goes to the cooler, where a good one sends ${p.healthyColdLeft}. Wear the pump or clog the filter until both readings match (within a tenth).`,
      hint: 'Both readings stand further down, under “Two readings”. Pump wear shows in the hot one. What shows only in the cold one?',
      after: (p: { aFilter: string; aColdLine: string }) =>
        `The filter, at about ${p.aFilter} times a clean one. Stiff cold fluid will not go through it, and the faster the pump wants it, the more is missing. Hot and slow it passes all that idle asks. A leak does the opposite. (In this model the cold line keeps its pressure even so, ${p.aColdLine}: stiff fluid hardly leaks, so the little that comes is enough. Who runs short is the cooler and lubrication. The howl is the pump drawing bubbles.)`,
    },
    carB: {
      words: (p: { fast: string; bColdLeft: string; bLine: string }) =>
        `Car B. Cold at ${p.fast} it sends ${p.bColdLeft} to the cooler, near enough what a good one sends. Hot at idle nothing goes there and the line has ${p.bLine}. Match both readings again.`,
      hint: 'The filter you found on car A has no place here. Take it back to clean first.',
      after: (p: { bWear: string; bore: string; boreLine: string }) =>
        `The pump, about ${p.bWear} worn. Hot at idle bad, cold and fast good: a leak. Two readings told it from the filter. They do not tell it from every other leak: a regulator bore worn by ${p.bore} also leaves the line at ${p.boreLine} hot at idle. For that you need the next test.`,
    },
  },
  reached: {
    line: (p: { speed: string; line: string; command: string }) =>
      `At ${p.speed} the line has ${p.line} of ${p.command}.`,
    left: (p: { temp: string; left: string }) => `At ${p.temp} there is ${p.left} left over.`,
    hot: (p: { line: string; left: string }) =>
      `Hot at idle the line has ${p.line}, with ${p.left} left over.`,
    fast: (p: { left: string }) => `Cold and fast ${p.left} is left over.`,
  },
};
