/** Rounds for path data, so that server and client write the same digits. A value that is no number draws at 0 rather than as NaN. */
export const roundPlace = (n: number): number =>
  Number.isFinite(n) ? Math.round(n * 100) / 100 : 0;

export const clamp01 = (n: number): number =>
  Number.isFinite(n) ? Math.min(1, Math.max(0, n)) : 0;

/** Pressure as a share of the full scale, in the six steps of hatch a reader can tell apart from 6 m. */
export function pressureStep(share: number): 0 | 1 | 2 | 3 | 4 | 5 {
  const p = clamp01(share);
  if (p < 0.01) return 0;
  if (p <= 0.15) return 1;
  if (p <= 0.35) return 2;
  if (p <= 0.55) return 3;
  return p <= 0.75 ? 4 : 5;
}

/** L/min below which the dashes take the next quicker step. Roughly doubling, since a trickle and a stream differ by ratio. */
const FLOW_STEPS_LMIN = [0.02, 0.3, 1, 3, 6, 12] as const;

/** Flow in steps, because the site's CSP bars inline style: a class carries the speed, so it cannot be continuous. */
export function flowStep(lmin: number): number {
  const q = Number.isFinite(lmin) ? Math.abs(lmin) : 0;
  let step = 0;
  for (const limit of FLOW_STEPS_LMIN) if (q >= limit) step += 1;
  return step;
}

export type Temp = 'cold' | 'hot';
export type Point = readonly [number, number];

/** Corner points written as SVG writes them, "x,y x,y": one line of code per path instead of ten. */
export const parsePoints = (text: string): Point[] =>
  text
    .trim()
    .split(/\s+/)
    .map((pair) => {
      const [x, y] = pair.split(',');
      return [Number(x), Number(y)] as const;
    });

export const linePath = (points: readonly Point[]): string =>
  `M${points.map(([x, y]) => `${roundPlace(x)} ${roundPlace(y)}`).join('L')}`;
