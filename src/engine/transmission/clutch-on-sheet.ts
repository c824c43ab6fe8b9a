import type { Circuit } from './circuits.ts';
import type { ClutchSheet, TransmissionSheet } from './sheet.ts';

/**
 * The clutch of a circuit as a sheet gives it: what all share, and what is its own.
 *
 * @param sheet clutch and clutches [units in the names of its keys]
 * @param circuit forward, reverse or high [-]
 * @returns the clutch [units in the names of its keys]
 * Range: as SHEET_FIELDS.
 * Source: bookkeeping, no physics.
 * @example
 * clutchOnSheet(trainingSheet, 'high').area_cm2 // 85
 */
export function clutchOnSheet(sheet: TransmissionSheet, circuit: Circuit): ClutchSheet {
  return { ...sheet.clutch, ...sheet.clutches[circuit] };
}
