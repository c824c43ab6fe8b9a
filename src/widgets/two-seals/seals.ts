/** How long each seal of the bench takes to engage, at every temperature: brought along by the page, solved. */

/** Fluid temperatures that are solved, and that the bench goes over [°C]. */
export const SPAN = { min: -20, max: 120, step: 2 } as const;
export const TEMPS: readonly number[] = Array.from(
  { length: (SPAN.max - SPAN.min) / SPAN.step + 1 },
  (_, i) => SPAN.min + i * SPAN.step,
);

/** Cracks in the transfer seal [mm], the one of the course in the middle. */
export const CRACKS = ['0.15', '0.25', '0.4'] as const;
/** How far the piston lip has hardened [% of hard through]. */
export const LIPS = ['50', '75', '100'] as const;
export type Crack = (typeof CRACKS)[number];
export type Lip = (typeof LIPS)[number];

export type SealName = 'sound' | `split-${Crack}` | `hard-${Lip}`;
export const SEALS: readonly SealName[] = [
  'sound',
  ...CRACKS.map((crack) => `split-${crack}` as const),
  ...LIPS.map((lip) => `hard-${lip}` as const),
];

/** [s] at each of TEMPS; null where the controller gives the clutch up. */
type Curve = readonly (number | null)[];
const brought = new Map<SealName, Curve>();

/** A line a seal; an empty place is a clutch given up. The same on every page, so it need not say for whom. */
export function bringSeals(text: string): void {
  for (const line of text.split('\n')) {
    const [name, ...times] = line.split(',');
    brought.set(
      name as SealName,
      times.map((one) => (one === '' ? null : Number(one))),
    );
  }
}

export function curveOf(name: SealName): Curve {
  const curve = brought.get(name);
  if (!curve) throw new Error(`The page brought no ${name}.`);
  return curve;
}

/** [s] at any temperature of the span, on a straight line between two that were solved. */
export function timeAt(name: SealName, tempC: number): number | null {
  const curve = curveOf(name);
  const place = (tempC - SPAN.min) / SPAN.step;
  const below = Math.min(curve.length - 2, Math.max(0, Math.floor(place)));
  const [from, to] = [curve[below] ?? null, curve[below + 1] ?? null];
  const along = place - below;
  if (along === 0) return from;
  if (along === 1) return to;
  return from === null || to === null ? null : from + along * (to - from);
}
