import {
  CIRCUITS,
  commandsAt,
  litresPerMinute,
  revPerSecond,
  solveSteady,
  type AppliedCircuit,
  type Circuit,
  type LeakParts,
  type Plant,
} from '../engine/index.ts';
import type { Car } from './car.ts';

/** A reading asked for. Commands and speed are those of the test point in the range of the circuit unless given. */
export interface Asked {
  readonly tempC: number;
  readonly point?: keyof Plant['testPoints'];
  /** The one circuit applied; forward where nothing is said. */
  readonly circuit?: Circuit;
  /** All circuits applied, where it is not one; none is Park. */
  readonly applied?: readonly Circuit[];
  readonly engineRpm?: number;
  readonly lineKpa?: number;
  readonly clutchKpa?: number;
}

/** One clutch as a gauge at its tap and a meter at its feed would have it. */
export interface ClutchReading {
  readonly kPa: number;
  readonly feedLmin: number;
  readonly leakLmin: number;
  readonly leaksLmin: LeakParts;
  readonly holdsNm: number;
}

/** All there is to read at one moment, in the metric units that people use. */
export interface Reading {
  readonly engineRpm: number;
  readonly lineCommandKpa: number;
  readonly clutchCommandKpa: number;
  readonly lineKpa: number;
  /** False where the pump could not keep the line at its command. */
  readonly lineAtCommand: boolean;
  readonly clutches: Readonly<Record<Circuit, ClutchReading>>;
  /** What the pump would move if nothing held it back, what it draws, what slips back, what it delivers. */
  readonly fullLmin: number;
  readonly intakeLmin: number;
  readonly slipLmin: number;
  readonly pumpLmin: number;
  readonly clearancesLmin: number;
  readonly bleedLmin: number;
  readonly boreLmin: number;
  /** Left over for converter, cooler and lubrication, and what of it returns from the cooler. */
  readonly leftOverLmin: number;
  readonly coolerLmin: number;
  /** Part of what the pump draws that is air, 0 to 1. */
  readonly air: number;
}

const NOT_APPLIED: ClutchReading = {
  kPa: 0,
  feedLmin: 0,
  leakLmin: 0,
  leaksLmin: { rings: 0, transferSeal: 0, pistonSeal: 0, hardLip: 0, openPort: 0 },
  holdsNm: 0,
};

function clutchReading(circuit: AppliedCircuit | undefined): ClutchReading {
  if (circuit === undefined) return NOT_APPLIED;
  const { rings, transferSeal, pistonSeal, hardLip, openPort } = circuit.parts;
  return {
    kPa: circuit.pressure / 1e3,
    feedLmin: litresPerMinute(circuit.feed),
    leakLmin: litresPerMinute(circuit.leak),
    leaksLmin: {
      rings: litresPerMinute(rings),
      transferSeal: litresPerMinute(transferSeal),
      pistonSeal: litresPerMinute(pistonSeal),
      hardLip: litresPerMinute(hardLip),
      openPort: litresPerMinute(openPort),
    },
    holdsNm: circuit.holds,
  };
}

/** What the gauges of a car show once nothing moves any more. Throws where the engine does not settle. */
export function readingOf({ plant, fluid }: Car, asked: Asked): Reading {
  const { tempC, point = 'idle', circuit = 'forward', applied = [circuit] } = asked;
  const commands = commandsAt(plant, point, applied[0] ?? 'forward');
  const engineRpm = asked.engineRpm ?? commands.engineRpm;
  const line = asked.lineKpa === undefined ? commands.line : asked.lineKpa * 1e3;
  const clutch = asked.clutchKpa === undefined ? commands.clutch : asked.clutchKpa * 1e3;
  const state = solveSteady({
    plant,
    fluid,
    tempC,
    engineSpeed: revPerSecond(engineRpm),
    lineCommand: line,
    clutchCommand: clutch,
    applied,
  });
  if (!state.status.converged) {
    throw new Error(`The engine did not settle for ${JSON.stringify(asked)}.`);
  }
  return {
    engineRpm,
    lineCommandKpa: line / 1e3,
    clutchCommandKpa: clutch / 1e3,
    lineKpa: state.linePressure / 1e3,
    lineAtCommand: state.lineAtCommand,
    clutches: {
      forward: clutchReading(state.circuits.forward),
      reverse: clutchReading(state.circuits.reverse),
      high: clutchReading(state.circuits.high),
    },
    fullLmin: litresPerMinute(plant.pump.displacement * revPerSecond(engineRpm)),
    intakeLmin: litresPerMinute(state.pumpIntake),
    slipLmin: litresPerMinute(state.pumpSlip),
    pumpLmin: litresPerMinute(state.pumpFlow),
    clearancesLmin: litresPerMinute(state.clearances),
    bleedLmin: litresPerMinute(state.bleed),
    boreLmin: litresPerMinute(state.regulatorLoss),
    leftOverLmin: litresPerMinute(state.leftOver),
    coolerLmin: litresPerMinute(state.coolerFlow),
    air: state.air,
  };
}

/** Pressure at the tap of the one circuit applied [kPa]. */
export function clutchKpa(car: Car, asked: Asked): number {
  return readingOf(car, asked).clutches[asked.circuit ?? 'forward'].kPa;
}

/** The same reading in each range, one circuit at a time. */
export function inEachRange(car: Car, asked: Omit<Asked, 'circuit' | 'applied'>) {
  const readings = CIRCUITS.map((circuit) => [circuit, readingOf(car, { ...asked, circuit })]);
  return Object.fromEntries(readings) as Record<Circuit, Reading>;
}
