import { printer } from '../../quantity/print.ts';
import { flow, length, pressure } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

export interface CircuitState {
  /** Shares of 1000 kPa. */
  pressures: { line: number; clutch: number };
  /** L/min. */
  flows: {
    pump: number;
    clearances: number;
    feed: number;
    rings: number;
    crack: number;
    leftOver: number;
  };
  holds: boolean;
  temp: Temp;
  crackMm: number;
  /** Already in the reader's units: "600 kPa", "0.8 L/min", and the width of the crack. */
  labels: { line: string; clutch: string; crack: string; width: string };
  /** How far the feed valve is open, 0..1. Left out: judged from the feed flow. */
  feedOpen?: number | undefined;
}

export const circuitExample: CircuitState = {
  pressures: { line: 0.6, clutch: 0.4 },
  flows: { pump: 10.2, clearances: 2.1, feed: 0.6, rings: 0.6, crack: 0, leftOver: 7.5 },
  holds: true,
  temp: 'cold',
  crackMm: 0,
  labels: { line: '600 kPa', clutch: '400 kPa', crack: '0 L/min', width: '0 mm' },
};

/** Full scale of the tints [kPa]: the line command under load. */
const FULL_SCALE = 1000;
/** From here on the drawing calls the fluid hot [°C]; halfway between the cold state and a hot road. */
const HOT_C = 60;

/** What a circuit reads: pressures [kPa], flows [L/min], crack [mm]. */
interface CircuitReadings extends Pick<CircuitState, 'flows' | 'holds' | 'feedOpen'> {
  readonly lineKpa: number;
  readonly clutchKpa: number;
  readonly tempC: number;
  readonly crackMm: number;
  /** Whether the crack lies on the way of this circuit; one that does not is drawn with a whole seal. */
  readonly throughSeal?: boolean;
}

/** The drawing of a circuit that reads so, in the reader's units. */
export function circuitFrom(readings: CircuitReadings, system: UnitSystem): CircuitState {
  const { lineKpa, clutchKpa, tempC, crackMm, throughSeal = true, ...as } = readings;
  const print = printer(system);
  return {
    ...as,
    pressures: { line: lineKpa / FULL_SCALE, clutch: clutchKpa / FULL_SCALE },
    temp: tempC >= HOT_C ? 'hot' : 'cold',
    crackMm: throughSeal ? crackMm : 0,
    labels: {
      line: print(lineKpa, pressure),
      clutch: print(clutchKpa, pressure),
      crack: print(as.flows.crack, flow),
      width: print(crackMm, length),
    },
  };
}

export function describeCircuit({ labels, temp, flows, crackMm, holds }: CircuitState): string {
  const { describe } = words;
  return [
    describe.pump[temp](labels.line),
    flows.leftOver > 0.02 ? describe.over : describe.noneOver,
    describe.way,
    crackMm > 0 ? describe.split(labels) : describe.whole,
    describe[holds ? 'holds' : 'slips'](labels.clutch),
  ].join(' ');
}
