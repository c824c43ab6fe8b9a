import { FLUID_TEMP_C, findRoot } from '../engine/index.ts';
import type { Car } from './car.ts';
import { needOf, type Demand } from './need.ts';
import { clutchKpa, type Asked } from './readings.ts';

/** Up to where a clutch holds, over all temperatures that the fluid law allows. */
export type LetsGo =
  | { readonly kind: 'always' }
  | { readonly kind: 'never' }
  /** It holds up to here [°C] and slips above. */
  | { readonly kind: 'at'; readonly tempC: number };

/** What a margin is taken over: temperatures [°C]. */
export const LETS_GO_RANGE = { min: FLUID_TEMP_C.min, max: FLUID_TEMP_C.max } as const;

/**
 * Where a margin that falls with temperature goes through nothing. Exact, by root finding: the points of a chart are too
 * far apart to read a degree from. A leak's margin falls; for a hard lip, which leaks cold, this is the wrong question.
 */
export function letsGoWhere(margin: (tempC: number) => number): LetsGo {
  const { min, max } = LETS_GO_RANGE;
  const cold = margin(min);
  const hot = margin(max);
  if (cold < 0) return { kind: 'never' };
  if (hot >= 0) return { kind: 'always' };
  return { kind: 'at', tempC: findRoot(margin, min, max, cold, hot).root };
}

/** Up to which temperature a car's clutch has the pressure that a demand needs, with the commands of a test point. */
export function letsGo(car: Car, demand: Demand, asked: Omit<Asked, 'tempC'> = {}): LetsGo {
  const need = needOf(demand, car.plant, asked.circuit).kPa;
  return letsGoWhere((tempC) => clutchKpa(car, { ...asked, tempC }) - need);
}

/** The same where the text relies on there being such a temperature [°C]; throws where there is none. */
export function letsGoAtC(car: Car, demand: Demand, asked: Omit<Asked, 'tempC'> = {}): number {
  const found = letsGo(car, demand, asked);
  if (found.kind !== 'at') {
    throw new Error(`There is no temperature at which it lets go: it ${found.kind} holds.`);
  }
  return found.tempC;
}
