import type { FaultId } from '../../engine/index.ts';

export const words = {
  table: {
    head: 'What still fits, and what would prove it.',
    caption:
      'The frame does not choose among these. A reading does (common practice, no source), and before each of them come the level and the proof of both speeds.',
    name: 'Name',
    share: 'Share',
    proof: 'Reading that proves it',
  },
  proofs: {
    transferSeal: 'Hot, first and Reverse taps low together, line right; then air at the seal',
    hardLip: 'Stop time in the cold against the same range warm',
    clutchControl: 'That clutch’s tap against its command, cold and hot; current right',
    sealingRings: 'That tap alone low hot, line right; air heard at the rings',
    pistonSeal: 'That tap alone low hot, line right; air heard in the drum',
    pumpWear: 'Line low at hot idle, right at speed; pump measured',
    regulatorBore: 'Line low at hot idle; bore does not hold vacuum',
    pressureControl: 'Line against its command, low by the same share cold and hot; current',
    filter: 'Line in the cold dips as a range is selected; filter cut open',
    lowFluid: 'Level in the maker’s window, the car on the flat',
    thinFluid: 'Fluid against the right one, through the same cup, equally warm',
    feedRestriction: 'All taps low, line right; cable or lever unhooked and set',
    openPort: 'That tap low cold as well as hot; air heard at the passage',
    frictionWear: 'Taps right, and it slips all the same',
    turbineSensor: 'Car pulls; in gear, chocked, foot on the brake, the turbine has to read zero',
  } satisfies Record<FaultId, string>,
  healthy: 'Both speeds proved, stop times and taps right, cold and hot',
  taken: {
    head: 'What is taken for granted.',
    cars: (p: { cars: string; drives: string }) =>
      `${p.cars} cars were run, from the mildest that its customer notices to the worst, on ${p.drives} drives each, from frost to hot. Every name weighs the same at first, and every car and drive of a name. A cause that is not among our fifteen was not run, so it is on no list here, and it may well be on yours.`,
    drive:
      'Each drive is the same: a range is selected, the brake is held, then let go with throttle. After Drive the same is tried in Reverse, at the same degrees.',
    rough:
      'The frame is read roughly, since no two cars are alike to the last figure: time as “when the brake was let go” or later, turbine beside engine in three steps, output as standing, creeping or rolling, the command as risen or not.',
    pressure: (p: { command: string; pressure: string }) =>
      `And what no frame holds: here ${p.command} was commanded, and ${p.pressure} was in the clutch.`,
  },
};
