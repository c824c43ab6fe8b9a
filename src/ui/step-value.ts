/**
 * The next stop of a control's grid above or below a value. A typed 37.8 on a grid of
 * fives goes to 40 or 35, not to 42.8: one press brings a person back to round numbers.
 */
export function stepValue(
  value: number,
  direction: 1 | -1,
  { min, max, step }: { readonly min: number; readonly max: number; readonly step: number },
): number {
  const place = (value - min) / step;
  const dust = 1e-9;
  const next = direction === 1 ? Math.floor(place + dust) + 1 : Math.ceil(place - dust) - 1;
  return Math.min(max, Math.max(min, tidy(min + next * step, step)));
}

/** Removes binary dust: 0.1 + 0.2 on a grid of 0.1 is 0.3. */
export function tidy(value: number, step: number): number {
  const decimals = Math.min(12, (String(step).split('.')[1]?.length ?? 0) + 3);
  const tidied = Number(value.toFixed(decimals));
  return tidied === 0 ? 0 : tidied;
}
