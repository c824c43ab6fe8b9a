import {
  applyFaults,
  drivetrain,
  fluidClasses,
  findRoot,
  gearbox,
  makeFluid,
  revPerSecond,
  solveEngagement,
  solveSteady,
  testPoints,
  type EngagementEventName,
} from '../../engine/index.ts';
import { temperature } from '../../quantity/quantities.ts';
import {
  clutchPressure,
  crack,
  kiloPascals,
  neededAt,
  type EngineNumber,
  type EngineNumbers,
} from './entry.ts';

/*
 * One crack, several temperatures at which it lets go: each belongs to what was asked for. The
 * steady tests of lesson 3 hold the command fixed, the controller of lesson 7 moves it. Lessons 3
 * and 7 print them side by side so that nobody takes one for a contradiction of the other.
 */
const CRACK_MM = 0.25;
const plant = applyFaults(gearbox, crack(CRACK_MM));
const fluid = makeFluid(fluidClasses['low-viscosity']);
const lets = (value: number, what: string): EngineNumber => ({
  value,
  quantity: temperature,
  what: `0.25 mm crack: ${what}`,
});

/**
 * The coolest fluid at which an event comes as the car pulls away, to a tenth of a degree: a yes or
 * a no has no root to find. Nothing that would come after the end of the training story counts.
 */
function coolestWith(event: EngagementEventName): number {
  const comes = (tempC: number): boolean =>
    solveEngagement({
      plant,
      fluid,
      tempC,
      range: 'drive',
      rangeSelection: 'electronic',
    }).events.some((one) => one.event === event);
  let [without, withIt] = [20, 100];
  if (comes(without) || !comes(withIt)) {
    throw new Error(`The lessons need "${event}" to begin between 20 and 100 °C. It does not.`);
  }
  while (withIt - without > 0.1) {
    const middle = (without + withIt) / 2;
    if (comes(middle)) withIt = middle;
    else without = middle;
  }
  return withIt;
}

/** What the controller asks for at idle (the model's section 7: never under 500 and 250 kPa). */
const IDLE_COMMAND = { line: 500e3, clutch: 250e3 };
const hadAtIdle = (tempC: number): number =>
  solveSteady({
    plant,
    fluid,
    tempC,
    engineSpeed: revPerSecond(drivetrain.idleRpm),
    lineCommand: IDLE_COMMAND.line,
    clutchCommand: IDLE_COMMAND.clutch,
    applied: ['forward'],
  }).circuits.forward?.pressure ?? 0;
const hadUnderLoad = (tempC: number): number =>
  clutchPressure({ tempC, faults: crack(CRACK_MM), at: 'load' });

export const askedForNumbers: EngineNumbers = {
  'clutch-command-load': kiloPascals(testPoints.load.clutch, 'clutch commanded at 1500 rpm'),
  'crossing-default-load': lets(
    findRoot((tempC) => hadUnderLoad(tempC) - neededAt(1500), -30, 140).root,
    'takes off up to here, line and clutch commanded for load',
  ),
  'stop-idle-to': lets(
    findRoot((tempC) => hadAtIdle(tempC) - neededAt(drivetrain.idleRpm), 20, 140).root,
    'holds at idle up to here against the command of the engagement',
  ),
  'stop-raise-from': lets(
    coolestWith('pressure raised'),
    'from here on the ratio check fails once as the car pulls away',
  ),
  'stop-code-from': lets(coolestWith('code stored'), 'from here on it fails twice: code'),
};
