import {
  atTemperature,
  feedFlow,
  fluidAt,
  fluidInPlant,
  leakFlow,
  litresPerMinute,
  type Circuit,
  type Engagement,
} from '../engine/index.ts';
import type { Car } from './car.ts';

/** What an engagement has come to at each row of its trace, counted from its start. */
export interface Motion {
  /** Turns of engine, turbine and output shaft. */
  readonly engineTurns: Float64Array;
  readonly turbineTurns: Float64Array;
  readonly outputTurns: Float64Array;
  /** Through the feed hole and out of the circuit [L]. */
  readonly fedL: Float64Array;
  readonly leakedL: Float64Array;
  /** What leaves the circuit at that moment [L/min]. */
  readonly leakLmin: Float64Array;
}

/** Area under a column per minute, up to each row, by trapezoids. */
function soFar(time: Float64Array, perMinute: Float64Array): Float64Array {
  const sum = new Float64Array(time.length);
  for (let i = 1; i < time.length; i += 1) {
    const minutes = ((time[i] ?? 0) - (time[i - 1] ?? 0)) / 60;
    const mean = ((perMinute[i] ?? 0) + (perMinute[i - 1] ?? 0)) / 2;
    sum[i] = (sum[i - 1] ?? 0) + mean * minutes;
  }
  return sum;
}

/**
 * An engagement as things that move: what has turned and what has flowed since its start. A picture
 * drawn from it stands where time stands.
 */
export function inMotion(
  car: Car,
  { trace }: Engagement,
  { tempC, circuit }: { readonly tempC: number; readonly circuit: Circuit },
): Motion {
  const plant = atTemperature(car.plant, tempC);
  const fluid = fluidAt(fluidInPlant(plant, car.fluid), tempC);
  const { time, clutchPressure, clutchCommand, linePressure } = trace;
  const fed = time.map((_, i) => {
    const clutch = clutchPressure[i] ?? 0;
    const command = (clutchCommand[i] ?? 0) * plant.valveHolds[circuit];
    const pressures = { line: linePressure[i] ?? 0, clutch, command };
    return litresPerMinute(feedFlow(plant.feed, pressures, fluid));
  });
  const leakLmin = clutchPressure.map((clutch) =>
    litresPerMinute(leakFlow(plant.leaks[circuit], clutch, fluid)),
  );
  return {
    engineTurns: soFar(time, trace.engineRpm),
    turbineTurns: soFar(time, trace.turbineRpm),
    outputTurns: soFar(time, trace.outputRpm),
    fedL: soFar(time, fed),
    leakedL: soFar(time, leakLmin),
    leakLmin,
  };
}
