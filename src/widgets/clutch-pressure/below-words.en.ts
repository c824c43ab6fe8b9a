/** Fetched with the pictures that explain the answer. */
export const words = {
  circuit: {
    name: 'The circuit:',
    through: 'what the crack takes has to come through the feed hole first.',
    past: 'high goes another way around and does not pass through the transfer seal, so the crack cannot reach it. Drawn here with a whole seal.',
    line: 'Line',
    atCommand: 'at its command',
    short: 'short of its command',
    clutch: 'Clutch',
    holds: 'holds',
    slips: 'slips',
    canHold: 'Torque it can hold',
    asked: 'Torque asked of it',
    inWords: 'The drawing in words',
  },
  budget: {
    cold: 'Flow, cold',
    now: 'Flow, now',
    supply: 'Pump takes in',
    slip: 'pump slip',
    clearances: 'clearances',
    bleed: 'bleeds',
    rings: 'rings',
    crack: 'the crack',
    left: 'converter, lubrication',
    takes: (p: { temp: string; crack: string; left: string }) =>
      `at ${p.temp} the crack takes ${p.crack}, ${p.left} is left for converter and lubrication.`,
    takesAll: (p: { temp: string; crack: string }) =>
      `at ${p.temp} the crack takes ${p.crack}, nothing is left for converter and lubrication.`,
    noCrack: (p: { temp: string; left: string }) =>
      `at ${p.temp} there is no crack in this circuit, ${p.left} is left for converter and lubrication.`,
    noCrackNothing: (p: { temp: string }) =>
      `at ${p.temp} there is no crack in this circuit, and still nothing is left for converter and lubrication.`,
  },
  map: {
    name: 'Crack and temperature',
    y: 'Crack',
    holds: 'holds',
    slips: 'slips',
    nowhere: (p: { demand: string }) => `${p.demand}: no crack offered makes this circuit slip.`,
    edge: (p: { demand: string }) =>
      `${p.demand}: left of the line and below it the clutch holds. The wider the crack, the cooler it lets go.`,
  },
};
