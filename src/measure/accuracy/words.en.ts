import type { GoalId, Group } from './goals.ts';

/** The page about how often the planner is right: built into the page, never sent to a script. */
export const words = {
  title: 'How often the planner is right',
  description:
    'The planner tried on a thousand cars that differ from its model: how often the right fault comes out on top, how many minutes it takes, and what it cannot know.',
  lead: 'Before you trust a list of likely faults, ask how often such a list has been right. Here is what we counted, and what nobody could count.',

  outTitle: 'What came out',
  out: (cars: string, outside: string, two: string) =>
    `We built ${cars} cars in the computer and gave each of them one fault. None was quite like the model that the planner knows. The planner chose the tests, read them with the errors of real gauges, and stopped when one fault stood at 90 % or no test was worth its minutes. Another ${two} cars had two faults, and ${outside} had something wrong that is not in the list.`,
  counted: 'What was counted',
  here: 'Came out',
  goal: 'Meant to reach',
  rows: {
    rightFirst: 'The right one is on top when the planner stops',
    rightWithinTwo: 'The right one is among the first two',
    reached90: 'The planner reaches 90 %',
    calibration: 'How far the stated chance is off, on average',
    unlistedAccused: 'It ends on “not in this list” all the same',
    allReadings: 'The right one is on top after every reading there is',
    minutes: 'Minutes until the planner stops',
    minutesRatio: 'Those minutes over the minutes of the fixed order',
    falseAlarm: 'It says after every reading that no single fault fits',
    twoOnTopAll: 'One of them is on top after every reading there is',
    twoOnTop: 'One of them is on top when the planner stops',
    twoNoFit: 'After every reading it says that no single fault fits',
    twoNamed: 'After every reading the likeliest pair is the two that the car has',
    outsideOnTop: 'It says so after every reading there is',
    outsideAccused: 'It blames a listed part at 90 %',
    leakLeast: 'The 90 % region holds the true size: with the worst set of taps',
    leakMost: 'The same with the best set of taps',
  } satisfies Record<GoalId, string>,
  groups: {
    one: 'Cars with one fault',
    two: 'Cars with two faults',
    outside: 'Cars with something that is not in the list',
    crack: 'Size of a split in the transfer seal',
  } satisfies Record<Group, string>,
  orMore: (value: string) => `${value} or more`,
  orLess: (value: string) => `${value} or less`,
  misses: (count: number, all: number) =>
    count === 0
      ? 'Every line reaches what it was meant to reach.'
      : `The lines in bold fall short of what they were meant to reach: ${count} of ${all}.`,
  falseAlarm: (share: string) =>
    `Mind the line about “no single fault fits”. With every reading taken it said so of ${share} of the cars that had one fault. Take it as a reason to look again, and not as proof of a second fault.`,

  minutesTitle: 'Minutes',
  minutes: (planner: string, fixed: string, random: string) =>
    `To the end of its tests the planner spent ${planner} on a car with one fault, on average. A good shop’s fixed order, from codes and fluid to the bench, took ${fixed} on the same cars. Tests drawn from a hat took ${random}, because every change from cold to hot and back is paid for. All three stopped at the same 90 %.`,
  fixedOrder:
    'The fixed order is: codes, turbine speed with the engine off, fluid level, look of the fluid, cable, stop times cold, line pressure cold, stop times and slip hot, line pressure hot, cooler flow, taps hot, flow cup, pan, air test, vacuum, seal bench, taps cold.',

  diagramHeading: 'When it says 80 %',
  diagramIntro:
    'A chance is worth something only if it comes true as often as it says. Each mark gathers the cars for which the planner ended with about the same chance for its top fault. Where a mark lies on the slanted line, it was right as often as it said. Above the line it was more often right than it said, below the line less often. The bar through a mark shows how far luck alone could move it, with so few cars in it.',
  diagramTitle: 'What the planner said, and how often it was right',
  diagramDesc: (marks: number) =>
    `A square with both scales from 0 to 100 %. Across: the chance the planner gave its top fault. Up: how often that fault was the right one. A slanted line shows where both are equal; ${marks} marks with bars stand along it. The table below has their numbers.`,
  across: 'What it said, %',
  up: 'How often it was right, %',
  binCaption: 'The marks in numbers',
  said: 'It said',
  right: 'It was right',
  cars: 'Cars',
  seedCaption: 'The same by seed: each is a draw of cars of its own',
  seed: 'Seed',
  seedTop: 'Right on top',
  seedTwo: 'Among the first two',
  seedOff: 'Chance off by',
  seedRatio: 'Minutes over fixed order',

  differTitle: 'What the cars differ in',
  differIntro:
    'Each car was drawn anew. Whatever stands here could be off either way by as much as it says, and any amount in between was as likely as any other.',
  knownIntro: 'The planner knows that cars differ in these, but not which way a car is off:',
  unknownIntro: 'It is not told that cars differ in these:',
  ownError: (gauge: string) =>
    `On top of that, the gauge on a car reads all its pressures high or low together, by some ${gauge}, and every single reading errs by chance: a pressure, a stop time, a slip, a flow, an air test. What is seen and not measured, such as the look of the fluid, was drawn by how likely it is with that fault.`,

  cannotTitle: 'What it cannot know',
  sameModel:
    'These cars came out of the same model as the planner’s own table. A real transmission fails in ways that no model here has. So take these figures as the best case: in a shop, expect fewer right answers.',
  priors:
    'Nobody publishes how often each fault comes through the door. Here every fault was drawn as often as any other. If you see one of them every week, the list does not know.',
  assumed:
    'How far a reading errs, how many minutes a test takes and what a fault does to the pan are assumptions of this site. The cars were drawn by the same assumptions that the planner goes by.',
  two: (onTop: string, both: string, falsePair: string) =>
    `A few readings of a car with two faults often look like one fault. When the planner stopped, one of the two was on top in ${onTop}. With every reading taken it also weighs pairs, and its likeliest pair was the right one in ${both}. Of cars with one fault it named two in ${falsePair}. So take the readings that are at hand before you replace a part, and repeat them after the repair.`,
  sound: (accused: string, top: string) =>
    `It cannot prove that nothing is wrong. On sound cars it blamed a listed part in ${accused}, and “nothing wrong” was on top in ${top}. The fault list then stays long, and no test left is worth its minutes.`,
  alike:
    'A worn pump and a worn regulator bore read alike until you look in the pan or pull a vacuum. A hard lip hides until something is read cold, or with air.',

  againTitle: 'Count it again',
  again: (cars: number, seeds: string) =>
    `All figures of this page come from one file in the repository, and one command makes that file anew. It draws ${cars} cars for each of the seeds ${seeds}, and nothing in the planner was set by what came out for them. Put a number behind it to try a few cars without keeping anything.`,
  proof: 'How we know everything else',
  back: 'Back to measuring',

  known: {
    clearances: 'line clearances',
    rings: 'gap of the sealing rings, each circuit for itself',
    pump: 'leakage inside the pump',
    feed: 'area of the feed holes',
    kv40: 'viscosity at 40 °C (104 °F)',
    kv100: 'viscosity at 100 °C (212 °F)',
    crackWidth: 'width of a split in the transfer seal',
    temperature: 'true temperature, where the tool says cold, hot or frost',
  },
  unknown: {
    friction: 'friction of the clutch plates',
    stroke: 'oil it takes to stroke a clutch',
    spring: 'return springs',
    crackLength: 'length of a split through the seal',
    pistonGap: 'width of a gap at a piston seal',
    give: 'give of a filled circuit',
    inletLimit: 'suction the pump inlet can stand',
    commands: 'line and clutch commands',
    engineSpeed: 'engine speed at a test',
    passage: 'resistance of the feed passages',
    bleed: 'bleed holes',
    cooler: 'resistance of the cooler',
  },
};
