interface Line {
  line: string;
  clutch: string;
}
interface Needs {
  standing: string;
  firm: string;
}

export const words = {
  title: 'Does the clutch hold?',
  controls: { temp: 'Fluid', rpm: 'Engine, turns the pump' },
  predict: {
    question: (p: { hairs: string; crack: string; cold: string; before: string; hot: string }) =>
      `A crack ${p.hairs} wide, ${p.crack}. The car idles in gear. At ${p.cold} the clutch has ${p.before} and holds anything you ask of it. Warm the fluid to ${p.hot}. Clutch pressure:`,
    options: {
      same: {
        words: 'Stays as it was, because the regulator sets it.',
        why: (p: Line) =>
          `The regulator sets line pressure, and it did: ${p.line} cold and hot. But the clutch sits behind the feed hole. What the crack takes has to come through that hole first, and pressure is lost on the way.`,
      },
      line: {
        words: 'Falls, because line pressure falls with it.',
        why: (p: Line) =>
          `Line pressure did not fall: it still reads ${p.line}, and the pump has fluid to spare. A gauge on the line would show you nothing wrong. The loss is between the feed hole and the clutch.`,
      },
      clutch: {
        words: 'Falls, with the line still up: it stands, but cannot take off.',
        why: (p: Line & Needs) =>
          `Hot fluid runs through the crack faster than the feed hole can bring more. Line ${p.line}, clutch ${p.clutch}. Standing in gear asks for ${p.standing}, a firm take-off for ${p.firm}. So the car sits in gear and seems fine until you ask it to move.`,
      },
      gone: {
        words: 'Falls so far that it slips even standing in gear.',
        why: (p: Line & Needs) =>
          `A fair guess for a wider crack. This one leaves ${p.clutch}, and standing in gear asks for no more than ${p.standing}. Idle torque is small; that is why such a car passes a check at idle.`,
      },
    },
    runLabel: 'Run it hot',
  },
  outcome: (p: Line & Needs & { before: string }) =>
    `Line ${p.line}, as before. Clutch ${p.clutch}, down from ${p.before}. Standing in gear needs ${p.standing}, a firm take-off ${p.firm}.`,
  says: {
    holds: (p: { has: string; needs: string }) => `Holds: ${p.has}, ${p.needs} needed.`,
    slips: (p: { has: string; needs: string; carries: string; asked: string }) =>
      `Slips: ${p.has} of ${p.needs}, so it can carry ${p.carries} of the ${p.asked} asked.`,
    /** On the very edge both torques print alike. */
    justSlips: (p: { has: string; needs: string }) => `Slips: ${p.has} of ${p.needs}.`,
    lineShort: (p: { line: string; command: string }) =>
      `The pump cannot keep the line up: ${p.line} of ${p.command}.`,
    /** What was asked stands first, since one crack has a limit for each. */
    limit: {
      at: (p: { demand: string; temp: string }) =>
        `${p.demand}: with this crack it holds up to ${p.temp}.`,
      always: (p: { demand: string }) =>
        `${p.demand}: with this crack it holds at every temperature on the slider.`,
      never: (p: { demand: string }) => `${p.demand}: with this crack it never holds.`,
    },
    spared: 'High does not pass through the transfer seal, so the crack cannot reach it.',
  },
  chart: {
    name: 'Clutch pressure',
    takeaway: (p: { demand: string; needs: string }) => `${p.demand} needs ${p.needs}.`,
    x: 'Fluid temperature',
    y: 'Clutch pressure',
    whole: 'no crack',
    cracked: 'this crack',
    standing: 'to stand in gear',
    takeOff: 'to take off, gentle to firm',
    letsGo: (p: { temp: string }) => `lets go at ${p.temp}`,
    now: 'now',
  },
};
