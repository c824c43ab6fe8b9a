import * as z from 'zod';
import { CIRCUITS, FAULT_IDS, fluidClasses } from '../engine/index.ts';
import type { FluidClass } from '../engine/index.ts';

/** A number with its allowed range; both ends stand in the message, which `sentence.ts` completes. */
function between(min: number, max: number, unit: string): z.ZodNumber {
  const range = `must be a number from ${min} to ${max}${unit === '' ? '' : ` ${unit}`}`;
  return z.number(range).min(min, range).max(max, range);
}

const temperatureC = between(-30, 140, 'C');

const fluidSchema = z.union([
  z.enum(Object.keys(fluidClasses) as [FluidClass, ...FluidClass[]]),
  z.strictObject({
    kv40_cSt: between(2, 2000, 'cSt'),
    kv100_cSt: between(1, 200, 'cSt'),
    density15_kgm3: between(800.9, 1163.5, 'kg/m3'),
  }),
]);

/**
 * The engine's own parser reads the sheet, so that a sheet means the same here and on a page; here it is only something.
 */
const transmission = z.unknown().optional();

const severity = between(0, 1, '');
const faultSchema = z.union([
  severity,
  z.strictObject({ severity, circuit: z.enum(CIRCUITS).optional() }),
]);
const faultsSchema = z.strictObject(
  Object.fromEntries(FAULT_IDS.map((id) => [id, faultSchema.optional()])),
);

/** The requests of `npm run solve`, one schema a kind. Every key and unit is a contract: see the model page. */
export const requestSchemas = {
  fluid: z.strictObject({
    kind: z.literal('fluid'),
    fluid: fluidSchema,
    temperature_C: z.union([temperatureC, z.array(temperatureC)]),
  }),
  gap: z.strictObject({
    kind: z.literal('gap'),
    fluid: fluidSchema,
    temperature_C: temperatureC,
    pressure_kPa: between(-100_000, 100_000, 'kPa'),
    width_mm: between(0, 10_000, 'mm'),
    height_mm: between(0, 10, 'mm'),
    length_mm: between(0.01, 10_000, 'mm'),
  }),
  steady: z.strictObject({
    kind: z.literal('steady'),
    fluid: fluidSchema.optional(),
    temperature_C: temperatureC,
    engine_rpm: between(0, 8000, 'rpm'),
    line_kPa: between(0, 3000, 'kPa'),
    clutch_kPa: between(0, 3000, 'kPa'),
    applied: z.array(z.enum(CIRCUITS)),
    faults: faultsSchema.optional(),
    transmission,
  }),
  engagement: z.strictObject({
    kind: z.literal('engagement'),
    fluid: fluidSchema.optional(),
    temperature_C: temperatureC,
    rangeSelection: z.enum(['electronic', 'mechanical']),
    range: z.enum(['drive', 'reverse']),
    faults: faultsSchema.optional(),
    transmission,
  }),
  airTest: z.strictObject({
    kind: z.literal('airTest'),
    circuit: z.enum([...CIRCUITS, 'transferSeal']),
    faults: faultsSchema.optional(),
    transmission,
  }),
} as const;

export type RequestKind = keyof typeof requestSchemas;
export type Request = { [kind in RequestKind]: z.infer<(typeof requestSchemas)[kind]> };
export type FluidGiven = z.infer<typeof fluidSchema>;
export type FaultsGiven = z.infer<typeof faultsSchema>;
