import { words as names } from '../../car/names/words.en.ts';

const { park, reverse, neutral, drive } = names.ranges;

interface Range {
  range: string;
}

export const words = {
  ranges: { P: park, R: reverse, N: neutral, D: drive },
  failSafe: 'fail-safe',
  dead: 'no power',
  line: 'line',
  vent: 'vent',
  feeds: (p: Range) => `Feeds ${p.range}`,
  rod: 'Park rod',
  gearInTwo: ['Park', 'gear'],
  cable: {
    title: (p: Range) => `Mechanical range selection, lever in ${p.range}`,
    lever: 'Hand lever',
    roller: 'Roller',
    valve: 'Manual valve',
    stop: { right: ['Stop just past', 'the eye'], hard: ['Stop hard', 'on the eye'] },
    partly: (p: Range) => `Feeds ${p.range},`,
    partOpen: 'port part open',
    held: ['One gear held,', 'full pressure'],
    nothing: 'Feeds no clutch',
    vents: 'Clutches vent',
  },
  wire: {
    title: (p: Range) => `Electronic range selection, ${p.range} selected`,
    selector: 'Selector',
    solenoid: 'Park solenoid',
    byOil: { out: 'Oil holds it out', in: 'Its spring pushes in' },
    orMotor: 'or a motor',
    stays: 'stays put',
    sprung: ['The spring', 'chose Park'],
    ratchets: ['Pawl ratchets', 'till slow'],
    chose: ['Controller', 'chose Park'],
    waits: ['Neutral, Park', 'when slow'],
  },
  describe: {
    wire: (p: Range) =>
      `Electronic range selection with ${p.range} selected. The selector sends a request to the controller and nothing else moves by hand.`,
    wireOff: {
      in: 'The controller has no power: the clutches vent, and the spring of the park actuator has pushed the pawl in.',
      out: 'The controller has no power: the clutches vent, and the spring of the park actuator pushes the pawl against the turning park gear, where it ratchets until the vehicle is slow.',
    },
    wireFailSafe: {
      in: 'The controller is in fail-safe: the clutches vent and it commands Park.',
      out: 'The controller is in fail-safe: the clutches vent and it commands Neutral, and Park once the vehicle has slowed.',
    },
    wireFeeds: (p: Range) => `The controller feeds the ${p.range} clutch.`,
    wireFeedsNone: 'The controller feeds no clutch.',
    pawl: {
      in: 'The park pawl is engaged in the park gear.',
      notYet: 'The park pawl is not yet engaged.',
      out: 'The park pawl is released, with oil holding the park actuator back.',
      released: 'The park pawl is released.',
    },
    motor:
      'In other transmissions a motor moves the same rod; it may stay where it is without power.',
    selectorDead: 'The wire from the selector is dead.',
    solenoidsDead: 'The wires to the clutch solenoids are dead.',
    cable: (p: Range) =>
      `Mechanical range selection with the hand lever in ${p.range}. The cable turns the detent plate, which moves the manual valve and the park rod.`,
    stop: {
      hard: 'The cable is set wrong: its stop is hard against the eye, the detent roller sits beside the notch and the manual valve stands short of its place.',
      right:
        'The stop sits just past the eye of the cable, not hard against it, and the detent roller sits in its notch.',
    },
    cableOff: {
      fed: 'The controller has no power: oil alone holds a default gear, and the lever still moves the valve and the pawl.',
      none: 'The controller has no power: the clutches vent, and the lever still moves the valve and the pawl.',
    },
    cableFailSafe: {
      fed: 'The controller is in fail-safe: it holds a default gear at full pressure but cannot move the park pawl.',
      none: 'The controller is in fail-safe: it vents the clutches but cannot move the park pawl.',
    },
    valve: {
      P: 'In the manual valve a land covers the line, and both range passages are open to their vents.',
      N: 'In the manual valve the line ends in the groove, and both range passages are open to their vents.',
      R: 'The groove of the manual valve joins the line to Reverse; Drive is open to its vent.',
      D: 'The groove of the manual valve joins the line to Drive; Reverse is open to its vent.',
    },
    cableBroken: 'The cable is broken, so the plate may not stand where the lever does.',
  },
};
