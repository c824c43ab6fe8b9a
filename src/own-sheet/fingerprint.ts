/** What a table of the planner was worked out from. */
import type { Plant } from '../engine/index.ts';

/** The same for the same numbers, in whatever order their keys stand. */
function canonical(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, canonical(inner)]),
  );
}

/**
 * All numbers of a transmission, its name apart, after the code that works on them. Kept whole and not hashed: 3 kB a table,
 * and no two can be taken for each other.
 */
export const fingerprintOf = (plant: Plant, code: string): string =>
  `${code} ${JSON.stringify(canonical({ ...plant, name: '' }))}`;
