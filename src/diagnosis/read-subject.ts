/** What a test reads on a car by the model, on the solver's scale. */
import {
  airHeld,
  commandsAt,
  litresPerMinute,
  makeFluid,
  revPerSecond,
  solveEngagement,
  solveSteady,
  type AirTestTarget,
  type Circuit,
  type EngagementStory,
  type EngagementTrace,
  type Plant,
} from '../engine/index.ts';
import type { Subject } from './nuisances.ts';
import { onScale, type NumericTest } from './tests.ts';

/** "Did not stop" in the table [s]: the brake is held so long after selection. */
export const HELD_S = 5;
/** When the range is selected in a log [s]. */
export const SELECT_S = 0.5;
/** A turbine slower than this has stopped, for whoever reads a scan tool [rpm]. */
const STOPPED_RPM = 30;
/** The slip of a take-off counts from a second after the brake is off to the end of the log [s]. */
const SLIP_FROM_S = 4;

/** The brake is held to the end: nothing pulls away. */
const held: EngagementStory = {
  select: SELECT_S,
  brakeOff: SELECT_S + HELD_S,
  throttleRate: 0.2,
  throttleMost: 0.6,
  end: SELECT_S + HELD_S,
};

/** The car as an engagement is asked for it. */
const engaging = ({ plant, fluid, warmth }: Subject, { at }: NumericTest) => ({
  plant,
  fluid: makeFluid(fluid),
  tempC: warmth[at.warmth ?? 'hot'],
  range: at.range === 'reverse' ? ('reverse' as const) : ('drive' as const),
  rangeSelection: 'electronic' as const,
});

/** What a log shows of a stop-time test, the brake held to the end; a range is selected at SELECT_S. */
export const heldTrace = (subject: Subject, test: NumericTest): EngagementTrace =>
  solveEngagement({ ...engaging(subject, test), story: held }).trace;

/** Time from selection until the turbine of such a log stands [s]; HELD_S where it does not. */
export function stoppedIn({ time, turbineRpm }: EngagementTrace): number {
  for (let i = 1; i < time.length; i += 1) {
    const [t0 = 0, t1 = 0] = [time[i - 1], time[i]];
    const [n0 = 0, n1 = 0] = [turbineRpm[i - 1], turbineRpm[i]];
    if (t1 <= SELECT_S || n1 >= STOPPED_RPM) continue;
    const share = n0 > STOPPED_RPM ? (n0 - STOPPED_RPM) / (n0 - n1) : 0;
    return Math.min(HELD_S, t0 + share * (t1 - t0) - SELECT_S);
  }
  return HELD_S;
}

/** Time until the turbine stands, as a scan tool shows it [s]; HELD_S where it does not. */
export const stopTime = (subject: Subject, test: NumericTest): number =>
  // A sensor that never reads zero shows a turbine that never stops.
  subject.plant.turbineSensorRestRpm >= STOPPED_RPM ? HELD_S : stoppedIn(heldTrace(subject, test));

/** Of the turbine itself: a sensor that never reads zero lies at rest, and a take-off is over soon. */
function takeoffSlip(subject: Subject, test: NumericTest): number {
  const { trace } = solveEngagement({
    ...engaging(subject, test),
    plant: { ...subject.plant, turbineSensorRestRpm: 0 },
  });
  let most = 0;
  trace.time.forEach((time, i) => {
    if (time >= SLIP_FROM_S - 1e-9) most = Math.max(most, Math.abs(trace.slipRpm[i] ?? 0));
  });
  return most;
}

/** Speeds that the tests of this list are taken at, idling and under load, whatever the transmission [rpm]. */
export const TEST_RPM = { idle: 700, load: 1500 } as const;

const circuitIn = { drive: 'forward', reverse: 'reverse' } as const;

function steady({ plant, fluid, warmth, engineFactor = 1 }: Subject, { at }: NumericTest) {
  const { range, circuit, rpm = TEST_RPM.idle, warmth: warm = 'hot' } = at;
  const asked = circuit as Circuit | undefined;
  const applied: readonly Circuit[] =
    asked !== undefined
      ? [asked]
      : range === 'park' || range === undefined
        ? []
        : [circuitIn[range]];
  const point: keyof Plant['testPoints'] = rpm <= TEST_RPM.idle ? 'idle' : 'load';
  // The cooler is read in Park on the commands of idle, whatever the engine does.
  const commands = commandsAt(
    plant,
    applied.length === 0 ? 'idle' : point,
    applied[0] ?? 'forward',
  );
  return solveSteady({
    plant,
    fluid: makeFluid(fluid),
    tempC: warmth[warm],
    engineSpeed: revPerSecond(rpm * engineFactor),
    lineCommand: commands.line,
    clutchCommand: commands.clutch,
    applied,
  });
}

/** In the unit that a shop reads: kPa, s, rpm, L/min, percent, cSt. */
function inShopUnits(subject: Subject, test: NumericTest): number {
  const { plant, fluid } = subject;
  switch (test.kind) {
    case 'engineOffTurbine':
      return plant.turbineSensorRestRpm;
    case 'fluidCup':
      return fluid.kv40CSt * plant.viscosityFactor;
    case 'stopTime':
      return stopTime(subject, test);
    case 'takeoffSlip':
      return takeoffSlip(subject, test);
    case 'linePressure':
      return steady(subject, test).linePressure / 1e3;
    case 'clutchPressure':
      return (steady(subject, test).circuits[test.at.circuit as Circuit]?.pressure ?? 0) / 1e3;
    case 'coolerFlow':
      return litresPerMinute(steady(subject, test).coolerFlow);
    case 'airTest':
      return 100 * airHeld(plant, test.at.circuit as AirTestTarget);
  }
}

/** What a test reads on a car, on the solver's scale. */
export const readSubject = (subject: Subject, test: NumericTest): number =>
  onScale(test, inShopUnits(subject, test));
