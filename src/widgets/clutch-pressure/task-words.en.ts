export const words = {
  tasks: {
    edge: {
      words: (p: { reference: string; near: string }) =>
        `The crack of this course, ${p.reference}, car standing in gear. Warm the fluid until the clutch lets go, and stop within ${p.near} past that point.`,
      hint: 'Watch the open ring walk along the line. It lets go where the line dips under “to stand in gear”.',
      after: (p: { standsTo: string; gentleTo: string; firmTo: string }) =>
        `Standing in gear it holds up to about ${p.standsTo}. That is not the whole of it: on the same command a gentle take-off is lost from ${p.gentleTo} and a firm one from ${p.firmTo}. A hot fault has a temperature for each thing you ask. Write down what you asked beside the temperature.`,
    },
    widest: {
      words: (p: { hot: string }) =>
        `Fluid at ${p.hot}. Find the widest crack with which the car can still take off firmly.`,
      hint: 'Narrow the crack until it holds. Then go back up one step at a time.',
      after: (p: { holds: string; fails: string; hairs: string }) =>
        `With ${p.holds} it holds, with ${p.fails} it does not: ${p.hairs}. A split that you can hardly see decides. Look for it with a light and a loupe, and bend the lip over a pin.`,
    },
    speed: {
      words: (p: { hottest: string; lineShort: string; lineCommand: string }) =>
        `At ${p.hottest} line pressure is down to ${p.lineShort} as well. Speed the engine up until the line is back at its command of ${p.lineCommand}. Does the clutch come back with it? (Here only. On a car, revving in gear against the brake is a stall test: it cooks the fluid in seconds and the car can leap. Leave it to the maker’s procedure.)`,
      hint: 'Go up in steps and read the line pressure beside the drawing. Past a certain speed it stands still.',
      after: (p: { clutchFast: string; firm: string; fast: string; fed: string }) =>
        `The line is back, the clutch is not: ${p.clutchFast} of the ${p.firm} it needs, at ${p.fast} the same as at ${p.fed}. Once the line stands at its command the pump is not the limit any more. What it gives beyond that goes out at the regulator. The feed hole is the limit, however fast the pump turns.`,
    },
    high: {
      words: (p: { hot: string; reference: string }) =>
        `Fluid at ${p.hot}, crack ${p.reference}: forward slips. Leave the crack alone and find a circuit that holds.`,
      hint: 'Which circuit does not pass through the transfer seal?',
      after: (p: { highHas: string }) =>
        `High has ${p.highHas}: it does not pass through the transfer seal, so the crack cannot reach it. Forward and reverse slip, high is spared. That pattern points at what the two have in common.`,
    },
  },
  reached: {
    has: (p: { temp: string; has: string; needs: string }) =>
      `At ${p.temp} the clutch has ${p.has} of the ${p.needs} it needs.`,
    withCrack: (p: { crack: string; has: string; needs: string }) =>
      `With ${p.crack} the clutch has ${p.has}; it needs ${p.needs}.`,
    circuit: (p: { circuit: string; has: string; needs: string }) =>
      `${p.circuit} has ${p.has} of the ${p.needs} it needs, so it slips as well. Follow the fluid to that clutch, and see what it passes on the way.`,
    line: (p: { speed: string; line: string; command: string }) =>
      `At ${p.speed} the line has ${p.line} of ${p.command}.`,
  },
};
