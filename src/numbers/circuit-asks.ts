/** What the lessons on the way to the clutch ask of its circuit: the faults they follow, and what a gauge and a flow meter show. */
import { crackFault, oneFault, REFERENCE_CRACK_MM } from '../car/index.ts';
import type { Circuit, FaultSet } from '../engine/index.ts';
import { read, tapKpa } from './ask.ts';
import { kPa, lmin } from './entry.ts';

export const rings = oneFault('sealingRings', 40);
export const fifthWorn = oneFault('sealingRings', 20);
export const piston = oneFault('pistonSeal', 80);
export const port = oneFault('openPort', 70);
export const valve = oneFault('clutchControl', 80);
export const lip = oneFault('hardLip', 90);
export const choked = oneFault('feedRestriction', 80);
export const widest = crackFault(0.4);
export const split = crackFault(REFERENCE_CRACK_MM);
export const highRings = oneFault('sealingRings', 50, 'high');

export const has = (what: string, faults: FaultSet, tempC: number, circuit: Circuit = 'forward') =>
  kPa(tapKpa({ faults, tempC, circuit }), `${circuit} clutch at idle, ${what}, ${tempC} °C`);
/** All that the forward circuit loses at idle, and what of it goes past the rings [L/min]. */
function losses(faults: FaultSet, tempC: number) {
  const { leakLmin, leaksLmin } = read({ faults, tempC }).clutches.forward;
  return { all: leakLmin, rings: leaksLmin.rings, rest: leakLmin - leaksLmin.rings };
}
export function loses(name: string, what: string, faults: FaultSet, tempC: number) {
  const lost = losses(faults, tempC);
  const where = `${what}, ${tempC} °C, idle`;
  return {
    [`${name}-all`]: lmin(lost.all, `all that the forward circuit loses, ${where}`),
    [`${name}-rings`]: lmin(lost.rings, `of it, past the rings, ${where}`),
    [`${name}-rest`]: lmin(lost.rest, `of it, not past the rings, ${where}`),
  };
}
/** Diameter of a round hole [mm] by its area [m²]. */
export const holeMm = (area: number): number => 2e3 * Math.sqrt(area / Math.PI);
