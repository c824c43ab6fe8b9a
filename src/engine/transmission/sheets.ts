import type { TransmissionSheet } from './sheet.ts';

/**
 * The training transmission. Invented for teaching; no maker's transmission. Forward and reverse pass through the transfer
 * seal, high does not, and in third and fourth the forward clutch is off.
 */
export const trainingSheet: TransmissionSheet = {
  name: 'Training transmission',
  pump: { displacement_cm3: 17, slip: 3e-8, filter_perM3: 3.4e8, suction_kPa: 60 },
  line: {
    clearanceWidth_mm: 400,
    clearanceHeight_um: 38,
    clearanceLength_mm: 4,
    bleedHole_mm: 1.6,
    boreWidth_mm: 50,
    boreLength_mm: 6,
  },
  feed: { hole_mm: 1.9, passage_perM3: 2e10, band_kPa: 20 },
  rings: { width_mm: 377, height_um: 25, length_mm: 2 },
  seal: { circuits: ['forward', 'reverse'], width_mm: 14, length_mm: 3 },
  piston: { sealWidth_mm: 40, sealLength_mm: 1.5 },
  clutch: {
    area_cm2: 85,
    spring_N: 900,
    stroke_cm3: 30,
    compliance_m3Pa: 1e-10,
    faces: 10,
    radius_mm: 65,
    friction: 0.13,
  },
  clutches: {},
  converter: { capacity: 170, torqueRatio: 2 },
  inertia: { engine_kgm2: 0.18, turbine_kgm2: 0.035 },
  idle_rpm: 700,
  ratios: { first: 4, reverse: 3.4, third: 1.5 },
  finalDrive: 3.5,
  vehicle: { mass_kg: 2000, wheelRadius_m: 0.35, drag_N: 150 },
  commands: {
    idleLine_kPa: 600,
    idleClutch_kPa: 400,
    load_rpm: 1500,
    loadLine_kPa: 1000,
    loadClutch_kPa: 800,
    reverseFactor: 1.3,
    clutchMargin: 1.5,
    clutchLeast_kPa: 250,
    clutchMost_kPa: 1200,
    lineLead_kPa: 200,
    lineLeast_kPa: 500,
  },
  sump: { fill_L: 8, spare_L: 0.5, pullDown_L: 0.25 },
  cooler: { pressure_kPa: 400, resistance_perM3: 6.3e11 },
  fluid: 'low-viscosity',
  applyChart: {
    R: ['reverse'],
    '1': ['forward'],
    '2': ['forward'],
    '3': ['high'],
    '4': ['high'],
  },
};
