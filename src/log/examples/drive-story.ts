import { engage, makeCar, type CarGiven } from '../../car/index.ts';
import {
  illustrativeSettings,
  STOPPED_RPM,
  trainingStory,
  type DriveRange,
} from '../../engine/index.ts';

/** One moment of an invented drive, before a tool samples it. Speeds [rpm], pressure [kPa], temperature [°C], road [km/h]. */
export interface Moment {
  readonly time: number;
  readonly engine: number;
  readonly turbine: number;
  readonly output: number;
  readonly range: 'P' | 'R' | 'N' | 'D';
  readonly temperature: number;
  readonly brake: boolean;
  readonly throttle: number;
  readonly road: number;
  readonly clutch: number;
  readonly line: number;
}

/** What is driven, in order. */
export interface Leg {
  readonly car: CarGiven;
  readonly range: DriveRange;
  readonly tempC: number;
  /** In Park before it [s]; the log was switched off for so long before that. */
  readonly waits: number;
  readonly pause?: number;
  /** Driven on in the same gear after the take-off [s]; 0 where the controller has let go. */
  readonly drives: number;
  /** The controller only looks on: its limits are out of reach. */
  readonly looksOn?: boolean;
}

const outOfReach = { ...illustrativeSettings, engagementSlipRpm: 1e9, ratioSlipRpm: 1e9 };

const STEP = 0.01;
/** From driving to standing [s], then Neutral and Park. */
const BRAKING = 4;
/** Time constant of an unloaded engine that runs down [s]. */
const RUN_DOWN = 0.8;
const STANDING = 2;

/**
 * The legs, one after the other, every 10 ms. Selection and take-off come from the engine, controller included; waiting,
 * driving on and braking are drawn by hand between its end and the next: the gear holds there, so turbine is ratio x output.
 */
export function driveStory(legs: readonly Leg[]): readonly Moment[] {
  const story: Moment[] = [];
  let clock = 0;
  const put = (moment: Omit<Moment, 'time'>): void => {
    story.push({ time: clock, ...moment });
    clock += STEP;
  };
  for (const { car: given, range, tempC, waits, pause = 0, drives, looksOn = false } of legs) {
    clock += pause;
    const car = makeCar(given);
    const { trace, states } = engage(car, {
      tempC,
      range,
      outputStep: STEP,
      ...(looksOn && { settings: outOfReach }),
    });
    const ratio = car.plant.drive.ratios[range === 'drive' ? 'forward' : 'reverse'];
    const at = (column: Float64Array, row: number): number => column[row] ?? 0;
    const kmh = (row: number) => at(trace.vehicleSpeed, row) * 3.6;
    const still = {
      engine: at(trace.engineRpm, 0),
      turbine: at(trace.turbineSeenRpm, 0),
      output: 0,
      road: 0,
      brake: true,
      throttle: 0,
      temperature: tempC,
      clutch: 0,
      line: at(trace.linePressure, 0) / 1000,
    };
    for (let t = 0; t < waits; t += STEP) put({ ...still, range: 'P' });
    const letter = range === 'drive' ? 'D' : 'R';
    for (let row = 0; row < trace.time.length; row += 1) {
      const time = at(trace.time, row);
      put({
        engine: at(trace.engineRpm, row),
        turbine: at(trace.turbineSeenRpm, row),
        output: at(trace.outputRpm, row),
        range: time < trainingStory.select ? 'P' : letter,
        temperature: tempC,
        brake: time < trainingStory.brakeOff,
        throttle: at(trace.throttle, row) * 100,
        road: kmh(row),
        clutch: at(trace.clutchPressure, row) / 1000,
        line: at(trace.linePressure, row) / 1000,
      });
    }
    const end = trace.time.length - 1;
    // A false sensor goes on reading the same when the vehicle stops in gear.
    const floor =
      Math.min(...trace.turbineSeenRpm) > STOPPED_RPM ? Math.min(...trace.turbineSeenRpm) : 0;
    const held = !(states.at(-1)?.state ?? '').startsWith('failSafe');
    const output = at(trace.outputRpm, end);
    // Where the controller has let go, engine and turbine run down by themselves once the driver lifts; where not, the
    // engine comes down to the turbine, and the pressures with it.
    const falls = (from: number, to: number, after: number) =>
      to + (from - to) * Math.exp(-after / RUN_DOWN);
    const rolling = (share: number, brake: boolean, after: number) => {
      const drove = brake ? drives : 0;
      const shaft = output * share;
      const locked = ratio * shaft;
      put({
        ...still,
        engine: falls(
          at(trace.engineRpm, end),
          held ? Math.max(still.engine, locked) : still.engine,
          after + drove,
        ),
        turbine: held
          ? Math.max(locked, floor)
          : falls(at(trace.turbineRpm, end), still.turbine, after + drove),
        output: shaft,
        road: kmh(end) * share,
        range: letter,
        brake,
        throttle: brake ? 0 : 12,
        clutch: falls(at(trace.clutchPressure, end) / 1000, held ? 450 : 0, after + drove),
        line: falls(at(trace.linePressure, end) / 1000, 650, after + drove),
      });
    };
    for (let t = 0; t < drives; t += STEP) rolling(1, false, t);
    for (let t = 0; t < BRAKING; t += STEP) rolling(1 - t / BRAKING, true, t);
    for (let t = 0; t < STANDING; t += STEP) put({ ...still, range: t < STANDING / 2 ? 'N' : 'P' });
  }
  return story;
}
