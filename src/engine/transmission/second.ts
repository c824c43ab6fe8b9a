import { plantFromSheet } from './from-sheet.ts';
import type { Plant } from './plant.ts';
import type { TransmissionSheet } from './sheet.ts';

// Apart from the first, so that a page that does not ask about it does not carry it.
/**
 * A second invented transmission of another character, so that a rule learnt by heart on the first one fails: a smaller
 * pump, clutches of three sizes, a lighter car, forward still on in third, and the transfer seal on reverse and high. A
 * split seal there spares Drive take-off and takes Reverse and the upper gears.
 */
export const secondSheet: TransmissionSheet = {
  name: 'Second training transmission',
  pump: { displacement_cm3: 13, slip: 2.4e-8, filter_perM3: 4.2e8, suction_kPa: 60 },
  line: {
    clearanceWidth_mm: 300,
    clearanceHeight_um: 35,
    clearanceLength_mm: 4,
    bleedHole_mm: 1.3,
    boreWidth_mm: 44,
    boreLength_mm: 6,
  },
  feed: { hole_mm: 1.7, passage_perM3: 2.6e10, band_kPa: 25 },
  rings: { width_mm: 300, height_um: 24, length_mm: 2 },
  seal: { circuits: ['reverse', 'high'], width_mm: 11, length_mm: 2.5 },
  piston: { sealWidth_mm: 34, sealLength_mm: 1.5 },
  clutch: {
    area_cm2: 62,
    spring_N: 620,
    stroke_cm3: 21,
    compliance_m3Pa: 8e-11,
    faces: 8,
    radius_mm: 58,
    friction: 0.13,
  },
  clutches: {
    reverse: { area_cm2: 74, spring_N: 780, stroke_cm3: 27 },
    high: { area_cm2: 55, spring_N: 560, stroke_cm3: 18, faces: 10 },
  },
  converter: { capacity: 205, torqueRatio: 1.9 },
  inertia: { engine_kgm2: 0.14, turbine_kgm2: 0.026 },
  idle_rpm: 750,
  ratios: { first: 3.1, reverse: 2.7, third: 1 },
  finalDrive: 4.1,
  vehicle: { mass_kg: 1450, wheelRadius_m: 0.31, drag_N: 120 },
  commands: {
    idleLine_kPa: 620,
    idleClutch_kPa: 420,
    load_rpm: 1600,
    loadLine_kPa: 1100,
    loadClutch_kPa: 880,
    reverseFactor: 1.4,
    clutchMargin: 1.5,
    clutchLeast_kPa: 260,
    clutchMost_kPa: 1250,
    lineLead_kPa: 220,
    lineLeast_kPa: 520,
  },
  sump: { fill_L: 6.5, spare_L: 0.4, pullDown_L: 0.2 },
  cooler: { pressure_kPa: 380, resistance_perM3: 7.4e11 },
  fluid: 'ultra-low',
  applyChart: {
    R: ['reverse'],
    '1': ['forward'],
    '2': ['forward'],
    '3': ['forward', 'high'],
    '4': ['high'],
  },
};

/** The second training transmission; invented like the first. */
export const secondTraining: Plant = /* @__PURE__ */ plantFromSheet(secondSheet);
