interface Slip {
  slip: string;
}

const inOneLine = {
  waiting: 'In Park',
  watching: 'Watches slip',
  pressureRaised: 'Pressure raised',
};

export const words = {
  title: 'Controller states',
  titleNow: (p: { state: string }) => `Controller states, now: ${p.state}`,
  states: {
    ...inOneLine,
    engaging: 'Waits for the turbine',
    failSafeNeutral: 'Fail-safe: Neutral',
    failSafePark: 'Fail-safe: Park',
    failSafeDefaultGear: 'Fail-safe: one gear held',
  },
  /** The same in their boxes, with how much the pressure is raised. */
  boxes: {
    waiting: [inOneLine.waiting],
    engaging: ['Waits for', 'the turbine'],
    watching: [inOneLine.watching],
    pressureRaised: (p: { times: string }) => [inOneLine.pressureRaised, `${p.times} times`],
    failSafeNeutral: ['Fail-safe:', 'Neutral'],
    failSafePark: ['Fail-safe:', 'Park'],
    failSafeDefaultGear: ['Fail-safe:', 'gear held'],
  },
  /** At the arrows. */
  when: {
    selected: ['a range is selected'],
    looked: (p: Slip & { time: string }) => [
      `${p.time} after selection: one look,`,
      `slip over ${p.slip} is noted`,
    ],
    slipped: (p: Slip & { share: string; time: string }) => [
      'moving or on the throttle, and slip',
      `over ${p.slip}, or over ${p.share} of`,
      `turbine speed, for ${p.time}`,
    ],
    again: (p: { time: string }) => [`the same again, ${p.time}: code stored`],
    cableHolds: ['cable, if it', 'holds a gear'],
    cableOrRolling: ['cable, or still', 'rolling'],
    wireSlow: ['by wire,', 'slow'],
    parksLater: (p: { speed: string }) => [`by wire: Park once slower than ${p.speed}`],
  },
  describe: {
    looks: (p: Slip & { time: string }) =>
      `Seven states. In Park, until a range is selected. Then it waits for the turbine; ${p.time} after selection it looks once, notes slip over ${p.slip} as an engagement not finished, and watches slip.`,
    raises: (p: Slip & { share: string; time: string; times: string }) =>
      `From either state, moving or on the throttle, slip over ${p.slip}, or over ${p.share} of turbine speed if that is more, for ${p.time} leads to raised pressure, ${p.times} times as high.`,
    stores: 'The same once more stores the code and leads to fail-safe.',
    cable: 'With a cable, either one gear is held or the clutches vent to Neutral.',
    wire: (p: { speed: string }) =>
      `With electronic selection it is Park if slower than ${p.speed}, else Neutral, and Park once it is.`,
    now: (p: { state: string }) => `Now: ${p.state}.`,
  },
};
