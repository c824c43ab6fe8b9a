import type { Allowed } from '../error.ts';

const field = (name: string, unit: string, min: number, max: number): Allowed => ({
  name,
  unit,
  min,
  max,
});

/** What a sheet says of a clutch; the same for every circuit unless `clutches` says otherwise. */
export const CLUTCH_FIELDS = {
  area_cm2: field('Piston area', 'cm2', 10, 500),
  spring_N: field('Return spring force', 'N', 20, 10_000),
  stroke_cm3: field('Stroke volume', 'cm3', 3, 300),
  compliance_m3Pa: field('Give of the filled circuit', 'm3/Pa', 1e-12, 1e-8),
  faces: field('Friction faces', '', 1, 40),
  radius_mm: field('Mean friction radius', 'mm', 20, 250),
  friction: field('Friction coefficient', '', 0.03, 0.3),
} as const;

/**
 * Every number of a transmission sheet: what it is, its unit, and what is allowed. The names of the keys carry their
 * units, since people type them. Ranges are wide enough for any passenger-car transmission, and for most trucks.
 */
export const SHEET_FIELDS = {
  pump: {
    displacement_cm3: field('Pump displacement', 'cm3/rev', 3, 100),
    slip: field('Pump slip coefficient', '', 0, 1.5e-6),
    filter_perM3: field('Resistance of filter and pick-up', '1/m3', 1e6, 1e11),
    suction_kPa: field('Pressure to spare at the inlet', 'kPa', 5, 100),
  },
  line: {
    clearanceWidth_mm: field('Width of the line clearances', 'mm', 0, 3000),
    clearanceHeight_um: field('Height of the line clearances', 'um', 0, 200),
    clearanceLength_mm: field('Length of the line clearances', 'mm', 0.2, 100),
    bleedHole_mm: field('Line bleed hole', 'mm', 0, 5),
    boreWidth_mm: field('Width of the regulator bore gap', 'mm', 1, 300),
    boreLength_mm: field('Length of the regulator bore gap', 'mm', 0.5, 50),
  },
  feed: {
    hole_mm: field('Feed hole', 'mm', 0.3, 10),
    passage_perM3: field('Resistance of the feed passage', '1/m3', 0, 1e13),
    band_kPa: field('Band of the feed valve', 'kPa', 1, 200),
  },
  rings: {
    width_mm: field('Width of the sealing rings’ gap', 'mm', 1, 3000),
    height_um: field('Height of the sealing rings’ gap', 'um', 15, 119),
    length_mm: field('Length of the sealing rings’ gap', 'mm', 0.2, 30),
  },
  seal: {
    width_mm: field('Width of a split in the transfer seal', 'mm', 0.5, 200),
    length_mm: field('Length of a split in the transfer seal', 'mm', 0.2, 50),
  },
  piston: {
    sealWidth_mm: field('Width of a gap at the piston seal', 'mm', 0.5, 1000),
    sealLength_mm: field('Length of a gap at the piston seal', 'mm', 0.2, 30),
  },
  clutch: CLUTCH_FIELDS,
  converter: {
    capacity: field('Converter capacity', 'rpm/sqrt(N m)', 60, 500),
    torqueRatio: field('Converter torque ratio at stall', '', 1, 4),
  },
  inertia: {
    engine_kgm2: field('Inertia of the engine', 'kg m2', 0.02, 5),
    turbine_kgm2: field('Inertia of the turbine', 'kg m2', 0.003, 1),
  },
  idle_rpm: field('Idle speed', 'rpm', 300, 2000),
  ratios: {
    first: field('Ratio of first gear', '', 0.5, 10),
    reverse: field('Ratio of reverse gear', '', 0.5, 10),
    third: field('Ratio of third gear', '', 0.4, 6),
  },
  finalDrive: field('Final drive ratio', '', 1, 12),
  vehicle: {
    mass_kg: field('Mass of the vehicle', 'kg', 300, 40_000),
    wheelRadius_m: field('Wheel radius', 'm', 0.15, 0.8),
    drag_N: field('Rolling drag', 'N', 0, 5000),
  },
  commands: {
    idleLine_kPa: field('Line command at idle', 'kPa', 100, 3000),
    idleClutch_kPa: field('Clutch command at idle', 'kPa', 50, 3000),
    load_rpm: field('Engine speed of the load test', 'rpm', 500, 4000),
    loadLine_kPa: field('Line command under load', 'kPa', 100, 3000),
    loadClutch_kPa: field('Clutch command under load', 'kPa', 50, 3000),
    reverseFactor: field('Boost of Reverse', '', 1, 3),
    clutchMargin: field('Clutch command over need', '', 1, 4),
    clutchLeast_kPa: field('Least clutch command', 'kPa', 20, 2000),
    clutchMost_kPa: field('Most clutch command', 'kPa', 100, 3000),
    lineLead_kPa: field('Line command over clutch command', 'kPa', 0, 1000),
    lineLeast_kPa: field('Least line command', 'kPa', 50, 2000),
  },
  sump: {
    fill_L: field('Fluid in the transmission', 'L', 2, 60),
    spare_L: field('Fluid above the pick-up when cold and standing', 'L', 0.05, 10),
    pullDown_L: field('Fluid that 1000 rpm pull down at the pick-up', 'L', 0, 3),
  },
  cooler: {
    pressure_kPa: field('Pressure across the cooler', 'kPa', 50, 1500),
    resistance_perM3: field('Resistance of the cooler', '1/m3', 1e9, 1e14),
  },
} as const;
