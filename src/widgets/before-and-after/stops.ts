/** How long the turbine takes in each of the four cars: brought along by the page, solved. */
import { REPAIRS, type Repair } from '../../car/repairs.ts';

/** Fluid that a test may be taken at, and from one that was solved to the next [°C]. */
export const REACH = { min: 10, max: 110 } as const;
export const NODES = 2.5;

let brought: Partial<Record<Repair, readonly (number | null)[]>> = {};

/** Takes what the page brought along: a line a car, nothing where the turbine never stands. The same on every page. */
export function bringStops(text: string): void {
  const lines = text.split('\n');
  brought = Object.fromEntries(
    REPAIRS.map((repair, i) => [
      repair,
      (lines[i] ?? '').split(',').map((one) => (one === '' ? null : Number(one))),
    ]),
  );
}

/** Between two that were solved, in a straight line [s]; null where it does not stand at one of them. */
export function stopAt(repair: Repair, tempC: number): number | null {
  const place = Math.min(REACH.max - REACH.min, Math.max(0, tempC - REACH.min)) / NODES;
  const below = Math.floor(place);
  const times = brought[repair] ?? [];
  const [one = null, other = one] = [times[below], times[below + 1]];
  if (place === below || one === null || other === null) return place === below ? one : null;
  return one + (other - one) * (place - below);
}
