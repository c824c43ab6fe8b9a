import { words as planner } from '../planner/words.en.ts';
import { plural } from '../quantity/lists.ts';
import type { On } from '../cases/made-key.ts';
import type { Look, Outside, Question, Repair } from '../cases/lists.ts';
import type { SetUp, Warmth } from '../diagnosis/index.ts';

const questions: Record<Question, string> = {
  ranges: 'In which ranges?',
  minutes: 'How many minutes after a cold start?',
  stood: 'Does it matter how long it stood?',
  weather: 'Does the weather change it?',
  load: 'Uphill, towing, with more throttle?',
  restart: 'Does switching off and on cure it?',
  onset: 'Did it come suddenly or slowly?',
  lastWork: 'What was the last work on it?',
  lights: 'Any warning lights?',
};

/** What is looked at: what it is called, and what a good car shows. */
const looks: Record<Look, { readonly name: string; readonly good: string }> = {
  standing: {
    name: 'Let it stand for days, then start it',
    good: 'After three days it behaves just as it does after one night.',
  },
  window: {
    name: 'Level again, in the maker’s temperature window',
    good: 'In the window it says the same as the level check does.',
  },
  longDrive: {
    name: 'Forty minutes at highway speed, with the gauge in view',
    good: 'Forty minutes at speed show nothing that a warm drive around town does not.',
  },
  idle: { name: 'Idle speed, warm, in Park', good: 'Idle is where it should be.' },
  learned: { name: 'Learned values', good: 'No learned value is at its limit.' },
  connector: {
    name: 'Case connector, unplugged',
    good: 'The plug is dry, its pins clean and tight.',
  },
  supply: {
    name: 'Supply and ground at the plug, under load',
    good: '13.9 volts with the engine running, and less than a tenth of a volt lost to ground.',
  },
  frame: {
    name: 'Freeze frame and other codes',
    good: 'Nothing in the frame that you did not know, and no other code.',
  },
  unlocked: {
    name: 'Drive with the converter clutch commanded off',
    good: 'With the converter clutch off it does the same.',
  },
  strategy: {
    name: 'The maker’s description of how it should behave',
    good: 'The maker describes nothing of the kind.',
  },
};

const { hot, under, lift, running, chocked } = planner.cautions;
const standsRunning = `${running} ${chocked}`;
const lookCautions = (p: { tooHot: string }): Partial<Record<Look, string>> => ({
  longDrive: `Two people: one drives, one reads. Stop at ${p.tooHot}.`,
  window: `${hot} ${under} ${lift} ${running}`,
  idle: standsRunning,
  connector: 'Switch the ignition off before you unplug it.',
  supply: `${standsRunning} Keep hands, hair and sleeves clear of belts and fans.`,
  unlocked: 'Two people: one drives, one reads.',
  standing: standsRunning,
});

const outside: Record<Outside, string> = {
  lowReversePack: 'Low and reverse pack worn',
  drainBack: 'Converter drains back while it stands',
  overfull: 'Fluid level too high',
  filterPackedWithLining: 'Filter packed with loose lining',
  lostLearning: 'Learned values lost',
  openLineSolenoid: 'Line solenoid without current',
  lowSupply: 'Supply voltage low at the controller',
  converterClutch: 'Converter clutch',
  accumulatorSeal: 'Accumulator seal',
  coolerBlocked: 'Cooler restricted',
  boostLost: 'Reverse boost lost',
};

const repairs: Record<Repair, string> = {
  transferSeal: 'Transfer seal and bridge part',
  sealingRings: 'Sealing rings and their bore',
  pistonSeal: 'Piston or its seal',
  packs: 'Frictions and steels',
  clutchSolenoid: 'Solenoid or valve of the clutch',
  openPort: 'Put back the plug or check ball',
  cable: 'Adjust the cable, clear the feed',
  pump: 'Pump',
  bore: 'Repair the regulator bore',
  boostValve: 'Boost valve',
  pressureControl: 'Pressure control solenoid or its wiring',
  accumulator: 'Accumulator piston, seal and spring',
  checkValve: 'Converter check valve',
  filterFluid: 'Filter and fluid',
  rightFluid: 'Drain, and fill with the right fluid',
  drainToMark: 'Drain down to the mark',
  levelAndLeak: 'Stop the leak and set the level',
  coolerFlow: 'Clear or replace the cooler',
  coolerFlush: 'Flush cooler and lines',
  connectorSleeve: 'Connector sleeve',
  supply: 'Wiring: supply and ground',
  turbineSensor: 'Turbine speed sensor or its wiring',
  relearn: 'Idle relearn and adaptation drive',
  none: 'Nothing: explain it to the customer',
};

const warmth: Record<Warmth, string> = {
  frost: 'The car is frosty.',
  cold: 'The car is cold.',
  hot: 'The car is hot.',
};

const fitted: Partial<Record<SetUp, string>> = {
  scan: 'scan tool',
  lift: 'car on the lift',
  gaugeLine: 'gauge on the line',
  gaugeForward: 'gauge on the forward clutch',
  gaugeReverse: 'gauge on the reverse clutch',
  gaugeHigh: 'gauge on the high clutch',
  coolerHose: 'cooler hose in a can',
  panOff: 'pan off',
  valveBodyOff: 'valve body off',
  sealFixture: 'seal in its fixture',
};

export const words = {
  questions,
  looks,
  lookCautions,
  causes: {
    ...planner.faults,
    ...outside,
    unlisted: 'Something that is not on the planner’s list',
  },
  repairs,
  page: {
    title: 'A car in the bay',
    description:
      'One practice case: ask the customer, look, measure, pay the minutes, and say what is wrong. Then compare your way with the planner’s.',
    noScript:
      'A case needs JavaScript, which is off or did not load. The list of cases tells you what each customer says.',
    toList: 'All cases',
    none: 'No car is in the bay. Choose one from the list.',
    loading: 'The car is being driven in.',
    unknown: (p: { id: string }) =>
      `There is no case “${p.id}”. The link may have been cut short; choose one from the list.`,
    badMade: (p: { most: string }) =>
      `This link does not name a car. A made case needs a number from 1 to ${p.most}, a difficulty of 1, 2 or 3, and one of the two transmissions. Choose one from the list.`,
    failed: 'The case did not load. Check that you are connected, then load the page again.',
    reload: 'Load the page again',
  },
  complaint: {
    says: 'The customer says',
    car: (p: { car: string; selection: string }) => `${p.car}. ${p.selection}`,
    selection: {
      electronic: 'Ranges are selected electronically.',
      mechanical: 'A lever and a cable select the ranges.',
    },
    chart: 'Its apply chart',
    transmission: {
      training:
        'It has the training transmission: the transfer seal feeds the forward and the reverse clutch.',
      second:
        'It has the second training transmission: the transfer seal feeds the reverse and the high clutch.',
    } satisfies Record<On, string>,
  },
  bar: {
    label: 'Where you stand',
    minutes: (p: { minutes: string }) => `${p.minutes} min spent`,
    ready: 'Say what it is',
  },
  copyLink: 'Copy a link to this car',
  warmth,
  fitted,
  state: (p: { warm: string; there: string }) => `${p.warm} In place now: ${p.there}.`,
  ask: {
    title: 'Ask the customer',
    note: (p: { minutes: string }) =>
      `One conversation takes ${p.minutes} minutes, however much you ask.`,
  },
  look: {
    title: 'Look',
    note: 'What none of the gauges shows.',
    doIt: 'Do this check',
  },
  measure: {
    title: 'Measure',
    note: 'Minutes count what is not in place yet: warming up, fitting a gauge, opening the pan.',
    takes: (p: { minutes: string }) => `Takes ${p.minutes} minutes as the car stands now.`,
    doIt: 'Do this test',
    hint: 'What would the planner measure?',
    hinted: (tests: number) =>
      plural(tests, {
        one: 'This tells you most for the time it takes. Press it to go to it.',
        other: 'These tell you most for the time they take. Press one to go to it.',
      }),
    noHint: 'The planner finds no test worth its minutes any more.',
  },
  shut: {
    why: 'This car was handed in on this device before, so its answer would be on the wall.',
    again: 'Work it from the start',
    answer: 'Show how it went',
  },
  unkept: 'Your browser keeps nothing for this site, so this case is lost when you leave the page.',
  known: {
    title: 'What you know',
    again: (p: { steps: string }) => `What you know (${p.steps})`,
    said: 'The customer said',
    asked: (p: { question: string; answer: string }) => `${p.question} “${p.answer}”`,
    none: 'Only what the customer said. Ask, look and measure as you would in the shop. Each thing takes its minutes. When you know what it is, say so.',
    read: (p: { test: string; value: string }) => `${p.test}: ${p.value}`,
  },
  conclude: {
    title: 'What is it?',
    note: 'One cause, or two where one does not explain every reading.',
    first: 'What is wrong',
    second: 'And a second cause',
    which: 'In which clutch',
    choose: 'Choose one',
    nothingElse: 'Nothing else',
    listed: 'Faults that the planner knows',
    unlisted: 'Other causes',
    nothing: 'No fault',
    repairs: 'What do you do about it?',
    handIn: 'Hand it in',
    noCause: 'Choose what is wrong first. If nothing is, choose “Nothing wrong”.',
    noCircuit: 'This fault sits in one clutch. Choose which.',
    twice: 'The same cause stands there twice. Choose another, or “Nothing else”.',
    noRepair: 'Choose at least one thing to do, even if that is nothing.',
    once: 'You can hand it in once. After that you see what it was.',
  },
  instrument: {
    sound: (p: { value: string }) => `On a healthy car, about ${p.value}.`,
    gauge: 'Pressure gauge',
    air: 'Held, percent',
    speed: 'Turbine speed',
    time: 'Time after selection',
    turbine: 'turbine',
    traceTakeaway: 'The speed signal after the range was selected.',
    gaugeDesc: (p: { value: string }) => `The needle stands at ${p.value}.`,
    flutter: { steady: 'The needle stands still.', flutters: 'The needle swings to and fro.' },
    flutterTitle: 'Line gauge at 3000 rpm',
    level: {
      full: 'Between the marks.',
      low: 'Below the lower mark.',
      veryLow: 'No fluid on the stick.',
    },
    levelTitle: 'Dipstick',
    panTitle: 'Pan and filter, seen from above',
    pan: {
      clean: 'A little gray paste on the magnet, as in any healthy pan.',
      dust: 'Black lining dust all over the floor.',
      metal: 'Slivers of metal on the floor.',
      clogged: 'The pleats of the filter are closed with dirt.',
    },
    canTitle: 'Cooler return, one minute into a can',
    canDesc: (p: { value: string }) => `${p.value} came into the can.`,
  },
};
