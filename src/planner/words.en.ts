import type { Name, OutcomeKind, SetUp, Test, Warmth } from '../diagnosis/index.ts';
import { words as names } from '../car/words.en.ts';

const warmths: Record<Warmth, string> = { frost: 'frosty', cold: 'cold', hot: 'hot' };

const ofCircuit = { line: 'line', ...names.circuits, transferSeal: 'transfer seal' };

/** Where, how warm and how fast a test is done, in words. */
interface Place {
  circuit: string;
  range: string;
  warm: string;
  speed: string;
  /** Of the sample in the flow cup. */
  sample: string;
}

/** What a shop calls a test. */
const tests: { readonly [K in Test['kind']]: (p: Place) => string } = {
  codes: () => 'Stored ratio codes',
  engineOffTurbine: () => 'Turbine speed, engine off, key on',
  fluidLevel: () => 'Fluid level at its temperature',
  fluidLook: () => 'Look and smell of the fluid',
  cable: () => 'Lever or cable adjustment',
  solenoidCurrent: (p) => `Solenoid current against command, ${p.circuit}`,
  fluidCup: (p) => `Flow cup, a sample at ${p.sample}`,
  stopTime: (p) => `Time until the turbine stops, ${p.range}, ${p.warm}`,
  takeoffSlip: (p) => `Peak slip on take-off, ${p.range}, ${p.warm}`,
  linePressure: (p) => `Line pressure, ${p.range}, ${p.speed}, ${p.warm}`,
  gaugeFlutter: (p) => `Does the line gauge flutter, ${p.range}, ${p.speed}, ${p.warm}`,
  clutchPressure: (p) => `Clutch pressure, ${p.circuit}, ${p.speed}, ${p.warm}`,
  coolerFlow: (p) => `Cooler return, ${p.range}, ${p.speed}, ${p.warm}`,
  panFilter: () => 'Pan and filter',
  airTest: (p) => `Air test, ${p.circuit}`,
  airWhere: (p) => `Where the air escapes, ${p.circuit}`,
  boreVacuum: () => 'Vacuum on the regulator bore',
};

const outcomes: { readonly [K in OutcomeKind]: Readonly<Record<string, string>> } = {
  fluidLevel: { full: 'Full', low: 'Low', veryLow: 'Very low' },
  fluidLook: { normal: 'Normal', dark: 'Dark or burnt', metal: 'Metal in it', foam: 'Foam' },
  cable: { inAdjustment: 'In adjustment', out: 'Out of adjustment' },
  solenoidCurrent: { inRange: 'As commanded', off: 'Off by more than a tenth' },
  gaugeFlutter: { steady: 'Steady', flutters: 'Flutters' },
  panFilter: { clean: 'Clean', dust: 'Lining dust', metal: 'Metal', clogged: 'Filter clogged' },
  airWhere: { quiet: 'Quiet', rings: 'At the rings', drum: 'In the drum', passage: 'In a passage' },
  boreVacuum: { holds: 'Holds', leaks: 'Leaks' },
};

/** What is done first, as it follows on "First". */
const setUps = (p: { hot: string }): Record<SetUp, string> => ({
  hot: `warm the car to ${p.hot}`,
  cold: 'let the car cool overnight',
  frost: 'wait for a night of frost',
  scan: 'connect the scan tool',
  lift: 'put the car on the lift',
  gaugeLine: 'fit the gauge on the line',
  gaugeForward: 'fit the gauge on the forward clutch',
  gaugeReverse: 'fit the gauge on the reverse clutch',
  gaugeHigh: 'fit the gauge on the high clutch',
  coolerHose: 'lead the cooler hose into a can',
  panOff: 'take the pan off',
  valveBodyOff: 'take the valve body off',
  sealFixture: 'put the seal in its fixture',
});

/** Amounts in cautions, as the reader's units have them. */
export interface Limits {
  readonly gauge: string;
  readonly drained: string;
  readonly handWarm: string;
  readonly air: string;
}

/** Before a test that can hurt somebody. The maker's service information comes first. */
const cautions = {
  hot: 'Hot fluid burns skin.',
  under: 'Let the exhaust cool before you go under.',
  running: 'Turn the exhaust extraction on.',
  chocked:
    'Chock the wheels, then hold the service brake. Nobody stands in front of the car or behind it.',
  takeoff:
    'Drive on a clear lane only. Hold the brake until nobody stands in front or behind. Two people: one drives, one reads.',
  loaded: 'Load it for five seconds at most, then give it a minute in Neutral.',
  fast: 'Do this on a lift or on rollers only, with the driven wheels free and guarded.',
  gauge: (p: Limits) =>
    `Fit the gauge with the engine off and the pressure gone. Use one that goes to ${p.gauge}, and keep its hose clear of shafts and exhaust.`,
  lift: 'Set stands under the body.',
  cooler: (p: Limits) => `Check the level first. Stop at ${p.drained} drained, and top up.`,
  open: (p: Limits) => `Let the fluid cool to under ${p.handWarm}, and disconnect the battery.`,
  air: (p: Limits) =>
    `Wear goggles, set the regulator to ${p.air} at most, and keep your hands off the pistons.`,
};

const faults: Record<Name, string> = {
  ...names.faults,
  healthy: 'Nothing wrong',
  unlisted: 'Something that is not in this list',
};

/** A number of minutes as it was printed. */
export const minutesOf = (minutes: string): string =>
  minutes === '1' ? '1 minute' : `${minutes} minutes`;

export const words = {
  tests,
  warmths,
  ranges: names.ranges,
  circuits: ofCircuit,
  clutches: names.clutches,
  outcomes,
  setUps,
  cautions,
  faults,
  groups: {
    codes: 'Codes',
    engineOffTurbine: 'Sensor',
    fluidLevel: 'Fluid',
    fluidLook: 'Fluid',
    fluidCup: 'Fluid',
    cable: 'Outside',
    solenoidCurrent: 'Electrical',
    stopTime: 'Log',
    takeoffSlip: 'Log',
    linePressure: 'Line pressure',
    gaugeFlutter: 'Line pressure',
    clutchPressure: 'Clutch pressure',
    coolerFlow: 'Cooler',
    panFilter: 'Pan off',
    airTest: 'Valve body off',
    airWhere: 'Valve body off',
    boreVacuum: 'Valve body off',
  } satisfies Record<Test['kind'], string>,
  asleep: 'The planner is loading.',
  failed: 'The planner did not load. Check that you are connected, then load the page again.',
  form: {
    title: 'A reading',
    test: 'Test',
    value: 'It read',
    temperature: 'Fluid temperature, if you read it',
    usual: (p: { temperature: string }) => `Left empty it counts as ${p.temperature}.`,
    askUnit: (p: { unit: string; means: string }) =>
      `Did you mean ${p.unit}? That would be ${p.means}.`,
    band: (p: { given: string; warm: string; range: string }) =>
      `${p.given} does not fit this test: ${p.warm} is ${p.range}. Check the number, or choose the test that fits it.`,
    range: (p: { typed: string; middle: string }) =>
      `“${p.typed}” is a range, and a reading is one number: write what yours read. If it swung between the two, take the middle, ${p.middle}.`,
    letterO: (p: { typed: string }) =>
      `There is a letter O in “${p.typed}” where a zero should be. Write the number with a zero.`,
    neverStopped: 'It did not stop within two and a half seconds',
    seen: 'It showed',
    notSeen: 'Choose what it showed. Nothing is taken down for a test that nobody looked at.',
    stored: 'Stored',
    none: 'None of these',
    noCode: 'Choose the codes that are stored, or “None of these” if you read them and none is.',
    add: 'Add this reading',
    frost: 'A frosty morning can be waited for',
  },
  readings: {
    title: 'Your readings',
    none: 'None yet.',
    takeFirst: 'Take the first test below, or choose one that you have done.',
    did: (p: { test: string; value: string }) => `${p.test}: ${p.value}`,
    remove: 'Take out',
    takenOut: (p: { reading: string }) => `Taken out: ${p.reading}.`,
    allOut: 'All readings are taken out.',
    putBack: 'Put it back',
    minutes: (p: { minutes: string }) => `${minutesOf(p.minutes)} of tests so far.`,
    never: 'did not stop',
    noCodes: 'none',
    again: 'Start over',
  },
  next: {
    title: 'Measure next',
    takes: (p: { minutes: string }) => minutesOf(p.minutes),
    needs: (p: { setUps: string }) => `First ${p.setUps}.`,
    tells: {
      much: 'Splits the list in half or better.',
      some: 'Splits off a good part of the list.',
      little: 'Tells a little.',
    },
    ifSo: (p: { fault: string; value: string }) => `${p.fault}: about ${p.value}`,
    expected: 'What it should read, if it is:',
    did: 'I have done this one',
    working: 'Working out which test tells most for its minutes.',
  },
  assumed:
    'For the training transmission, which is invented. How often faults come, how far readings err and how long tests take are assumptions of this site: no published figures exist.',
};
