/** Every number of a sheet that may be typed: where it lies on the sheet, as which quantity, and what is allowed. */
import {
  CIRCUITS,
  CLUTCH_FIELDS,
  clutchOnSheet,
  FLUID_LIMITS,
  fluidClasses,
  SHEET_FIELDS,
  trainingSheet,
  type Allowed,
} from '../engine/index.ts';
import {
  area,
  converterCapacity,
  density,
  dimension,
  fluidVolume,
  force,
  friction,
  inertia,
  mass,
  ratio,
  volume,
} from '../quantity/part-quantities.ts';
import {
  count,
  kinematicViscosity,
  length,
  percent,
  pressure,
  speed,
} from '../quantity/quantities.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { Range } from '../quantity/refusals.ts';

export interface SheetField {
  /** As the engine names it: commands.idleLine_kPa. */
  readonly path: string;
  readonly quantity: Quantity;
  /** Size in the quantity's metric unit = size on the sheet × this. */
  readonly per: number;
  /** What may be typed, and what is assumed where nothing is, in the quantity's metric unit. */
  readonly range: Required<Range>;
  readonly assumed: number;
}

type Nested = Readonly<Record<string, unknown>>;
const at = (from: object, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, key) => (inner as Nested)[key], from);

const tidy = (value: number): number => Number(value.toPrecision(12));

const make = (
  path: string,
  quantity: Quantity,
  per: number,
  { min, max }: Allowed,
  training: number,
): SheetField => ({
  path,
  quantity,
  per,
  range: { min: tidy(min * per), max: tidy(max * per), example: tidy(training * per) },
  assumed: tidy(training * per),
});

function field(path: string, quantity: Quantity, per = 1): SheetField {
  const allowed = at(SHEET_FIELDS, path) as Allowed;
  return make(path, quantity, per, allowed, at(trainingSheet, path) as number);
}

/** A number that no service information prints: as a part of what the training transmission has. */
function share(path: string): SheetField {
  const training = at(trainingSheet, path) as number;
  return field(path, percent, 100 / training);
}

/** One number of each circuit's clutch. */
const eachClutch = (key: keyof typeof CLUTCH_FIELDS, quantity: Quantity): readonly SheetField[] =>
  CIRCUITS.map((circuit) =>
    make(
      `clutches.${circuit}.${key}`,
      quantity,
      1,
      CLUTCH_FIELDS[key],
      clutchOnSheet(trainingSheet, circuit)[key],
    ),
  );

const filled = fluidClasses['low-viscosity'];

/** In the order in which a technician would look them up; those after `areas` are folded away at first. */
export const FIELDS = {
  ratios: [
    field('ratios.first', ratio),
    field('ratios.reverse', ratio),
    field('ratios.third', ratio),
    field('finalDrive', ratio),
  ],
  commands: [
    field('idle_rpm', speed),
    field('commands.idleLine_kPa', pressure),
    field('commands.idleClutch_kPa', pressure),
    field('commands.load_rpm', speed),
    field('commands.loadLine_kPa', pressure),
    field('commands.loadClutch_kPa', pressure),
    field('commands.reverseFactor', ratio),
  ],
  areas: eachClutch('area_cm2', area),
  clutches: [
    ...eachClutch('faces', count),
    ...eachClutch('radius_mm', dimension),
    ...eachClutch('spring_N', force),
    ...eachClutch('stroke_cm3', volume),
    field('clutch.friction', friction),
    share('clutch.compliance_m3Pa'),
  ],
  pump: [
    field('pump.displacement_cm3', volume),
    share('pump.slip'),
    field('pump.suction_kPa', pressure),
    share('pump.filter_perM3'),
  ],
  feed: [
    field('feed.hole_mm', length),
    share('feed.passage_perM3'),
    field('feed.band_kPa', pressure),
    field('line.bleedHole_mm', length),
  ],
  leaks: [
    field('line.clearanceWidth_mm', dimension),
    field('line.clearanceHeight_um', length, 1e-3),
    field('line.clearanceLength_mm', dimension),
    field('line.boreWidth_mm', dimension),
    field('line.boreLength_mm', dimension),
    field('rings.width_mm', dimension),
    field('rings.height_um', length, 1e-3),
    field('rings.length_mm', dimension),
    field('seal.width_mm', dimension),
    field('seal.length_mm', dimension),
    field('piston.sealWidth_mm', dimension),
    field('piston.sealLength_mm', dimension),
  ],
  rules: [
    field('commands.clutchMargin', ratio),
    field('commands.clutchLeast_kPa', pressure),
    field('commands.clutchMost_kPa', pressure),
    field('commands.lineLead_kPa', pressure),
    field('commands.lineLeast_kPa', pressure),
  ],
  converter: [
    field('converter.capacity', converterCapacity),
    field('converter.torqueRatio', ratio),
    field('inertia.engine_kgm2', inertia),
    field('inertia.turbine_kgm2', inertia),
  ],
  vehicle: [
    field('vehicle.mass_kg', mass),
    field('vehicle.wheelRadius_m', dimension, 1000),
    field('vehicle.drag_N', force),
  ],
  sump: [
    field('sump.fill_L', fluidVolume),
    field('sump.spare_L', volume, 1000),
    field('sump.pullDown_L', volume, 1000),
    field('cooler.pressure_kPa', pressure),
    share('cooler.resistance_perM3'),
  ],
  fluid: [
    make('fluid.kv40_cSt', kinematicViscosity, 1, FLUID_LIMITS.kv40CSt, filled.kv40CSt),
    make('fluid.kv100_cSt', kinematicViscosity, 1, FLUID_LIMITS.kv100CSt, filled.kv100CSt),
    make('fluid.density15_kgm3', density, 1, FLUID_LIMITS.density15, filled.density15),
  ],
} as const satisfies Readonly<Record<string, readonly SheetField[]>>;

export type FieldGroup = keyof typeof FIELDS;
export const ALL_FIELDS: readonly SheetField[] = Object.values(FIELDS).flat();
export const fieldAt = (path: string): SheetField | undefined =>
  ALL_FIELDS.find((one) => one.path === path);

/** Size on the sheet. Without the dust that a conversion leaves, so that 38 µm typed is the 38 of the training sheet. */
export const onSheet = ({ per }: SheetField, metric: number): number => tidy(metric / per);
