/**
 * Scales and ticks. The site has d3-scale for this, which brings colour and date
 * interpolation along (10 kB compressed, a quarter of a page's script budget) for the two
 * lines of arithmetic below. The tests hold these against d3-scale.
 */

export type ScaleKind = 'linear' | 'log';

export interface Scale {
  /** From a value to a place on the picture. */
  (value: number): number;
  invert(place: number): number;
  readonly domain: readonly [number, number];
  readonly kind: ScaleKind;
}

export function makeScale(
  kind: ScaleKind,
  domain: readonly [number, number],
  range: readonly [number, number],
): Scale {
  const [d0, d1] = domain;
  const [r0, r1] = range;
  if (!(d0 < d1) || (kind === 'log' && d0 <= 0)) {
    throw new RangeError(
      `A ${kind} axis needs a rising range${kind === 'log' ? ' above zero' : ''}; it was given ${d0} to ${d1}.`,
    );
  }
  const bend = kind === 'log' ? Math.log : (v: number): number => v;
  const unbend = kind === 'log' ? Math.exp : (v: number): number => v;
  const b0 = bend(d0);
  const slope = (r1 - r0) / (bend(d1) - b0);
  const scale = (value: number): number => {
    // On a log axis nothing at or below zero has a place; the bottom edge is the honest one.
    const safe = kind === 'log' && value <= 0 ? d0 : value;
    return r0 + (bend(safe) - b0) * slope;
  };
  return Object.assign(scale, {
    invert: (place: number): number => unbend(b0 + (place - r0) / slope),
    domain,
    kind,
  });
}

const FEWEST = 4;
const MOST = 6;
const fits = (ticks: readonly number[]): boolean => ticks.length >= FEWEST && ticks.length <= MOST;

function multiples(step: number, min: number, max: number): readonly number[] {
  const first = Math.ceil(min / step - 1e-9);
  const last = Math.floor(max / step + 1e-9);
  const decimals = Math.max(0, Math.ceil(-Math.log10(step)) + 1);
  const ticks: number[] = [];
  for (let i = first; i <= last && ticks.length <= 2 * MOST; i += 1) {
    ticks.push(Number((i * step).toFixed(decimals)) + 0);
  }
  return ticks;
}

/**
 * Four to six round numbers inside a range. Steps of 1, 2 and 5 are tried first; 2.5, 1.5, 4, 3, 6
 * and 8 only where those leave too few or too many.
 */
export function linearTicks(min: number, max: number): readonly number[] {
  const decade = 10 ** Math.floor(Math.log10((max - min) / FEWEST));
  for (const steps of [
    [1, 2, 5],
    [2.5, 1.5, 4, 3, 6, 8],
  ]) {
    const candidates = [0.1, 1, 10]
      .flatMap((size) => steps.map((step) => multiples(step * size * decade, min, max)))
      .filter(fits);
    // Six marks read better than four on a tall axis, and a phone still has room for five.
    const best = candidates.sort((a, b) => Math.abs(a.length - 5) - Math.abs(b.length - 5))[0];
    if (best) return best;
  }
  return [min, max];
}

/** Four to six marks on a log axis: decades, filled up or thinned out. */
export function logTicks(min: number, max: number): readonly number[] {
  const low = Math.floor(Math.log10(min) + 1e-9);
  const high = Math.ceil(Math.log10(max) - 1e-9);
  const spread = (digits: readonly number[], every: number): readonly number[] => {
    const ticks: number[] = [];
    for (let power = Math.ceil(low / every) * every; power <= high; power += every) {
      for (const digit of digits) {
        const tick = Number(`${digit}e${power}`);
        if (tick >= min * (1 - 1e-9) && tick <= max * (1 + 1e-9)) ticks.push(tick);
      }
    }
    return ticks;
  };
  const patterns = [[1], [1, 3], [1, 2, 5], [1, 2, 3, 5]].map((digits) => spread(digits, 1));
  const thinned = [2, 3, 4, 5].map((every) => spread([1], every));
  const best = [...patterns, ...thinned].find(fits);
  return best ?? linearTicks(min, max);
}

const found = new Map<string, readonly number[]>();

/** The marks of an axis. Remembered: an axis keeps its range while sixty frames a second ask for it. */
export function ticksFor(kind: ScaleKind, min: number, max: number): readonly number[] {
  const key = `${kind} ${min} ${max}`;
  let ticks = found.get(key);
  if (!ticks) {
    ticks = kind === 'log' ? logTicks(min, max) : linearTicks(min, max);
    if (found.size > 200) found.clear();
    found.set(key, ticks);
  }
  return ticks;
}

/** Decimals that tell neighbouring ticks apart: 0.1, 0.2 but 10, 20. */
export function tickDigits(ticks: readonly number[]): number {
  for (let digits = 0; digits < 6; digits += 1) {
    if (
      ticks.every(
        (tick) =>
          Math.abs(tick - Number(tick.toFixed(digits))) < 1e-9 * Math.max(1, Math.abs(tick)),
      )
    ) {
      return digits;
    }
  }
  return 6;
}
