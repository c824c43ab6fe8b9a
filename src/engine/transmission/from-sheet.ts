import type { Clutch } from '../clutch/torque.ts';
import { holeArea } from '../flow/hole.ts';
import { fluidClasses } from '../fluid/fluid.ts';
import { clutchOnSheet } from './clutch-on-sheet.ts';
import { CIRCUITS } from './circuits.ts';
import type { Circuit, PerCircuit } from './circuits.ts';
import type { CircuitLeaks, Plant } from './plant.ts';
import { fluidOnSheet } from './sheet.ts';
import type { TransmissionSheet } from './sheet.ts';

const kilo = 1e3;
const milli = 1e-3;
const micro = 1e-6;

/**
 * One value for each circuit.
 *
 * @param of what gives the value of a circuit [-]
 * @returns forward, reverse and high [any]
 * Range: none.
 * Source: bookkeeping, no physics.
 * @example
 * perCircuit((circuit) => circuit.length).high // 4
 */
export function perCircuit<Value>(of: (circuit: Circuit) => Value): PerCircuit<Value> {
  return Object.fromEntries(CIRCUITS.map((circuit) => [circuit, of(circuit)])) as Record<
    Circuit,
    Value
  >;
}

function clutchFrom(sheet: TransmissionSheet, circuit: Circuit): Clutch {
  const clutch = clutchOnSheet(sheet, circuit);
  return {
    // Divided, not multiplied: 85 cm2 and 30 cm3 then come out as the doubles nearest to 85e-4 and 30e-6.
    area: clutch.area_cm2 / 1e4,
    springForce: clutch.spring_N,
    strokeVolume: clutch.stroke_cm3 / 1e6,
    compliance: clutch.compliance_m3Pa,
    faces: clutch.faces,
    meanRadius: clutch.radius_mm / 1e3,
    friction: clutch.friction,
  };
}

function leaksFrom(sheet: TransmissionSheet, circuit: Circuit): CircuitLeaks {
  const { rings, seal, piston } = sheet;
  const atPiston = {
    width: piston.sealWidth_mm / 1e3,
    height: 0,
    length: piston.sealLength_mm / 1e3,
  };
  return {
    rings: {
      width: rings.width_mm / 1e3,
      height: rings.height_um / 1e6,
      length: rings.length_mm / 1e3,
    },
    transferSeal: {
      width: seal.circuits.includes(circuit) ? seal.width_mm / 1e3 : 0,
      height: 0,
      length: seal.length_mm / 1e3,
    },
    pistonSeal: atPiston,
    hardLip: atPiston,
    openPortArea: 0,
  };
}

/**
 * A sound transmission in SI out of its sheet.
 *
 * @param sheet whole and checked; see parseSheet [units in the names of its keys]
 * @returns the plant that every solver takes [SI]
 * Range: as checkSheet.
 * Source: unit conversions, exact.
 * @example
 * plantFromSheet(trainingSheet).clutches.forward.area // 0.0085
 */
export function plantFromSheet(sheet: TransmissionSheet): Plant {
  const { pump, line, feed, converter, inertia, ratios, vehicle, commands, sump, cooler } = sheet;
  const clutches = perCircuit((circuit) => clutchFrom(sheet, circuit));
  const feedArea = holeArea(feed.hole_mm * milli);
  const fluid = typeof sheet.fluid === 'string' ? fluidClasses[sheet.fluid] : sheet.fluid;
  return {
    name: sheet.name,
    pump: {
      displacement: pump.displacement_cm3 * micro,
      slip: pump.slip,
      suctionResistance: pump.filter_perM3,
      suctionLimit: pump.suction_kPa * kilo,
    },
    sump: {
      fill: sump.fill_L * milli,
      spare: sump.spare_L * milli,
      pullDown: sump.pullDown_L * micro,
    },
    missingFluid: 0,
    lineClearances: {
      width: line.clearanceWidth_mm / 1e3,
      height: line.clearanceHeight_um / 1e6,
      length: line.clearanceLength_mm / 1e3,
    },
    bleedArea: holeArea(line.bleedHole_mm * milli),
    regulatorBore: {
      width: line.boreWidth_mm / 1e3,
      height: 0,
      length: line.boreLength_mm / 1e3,
    },
    feed: { area: feedArea, passage: feed.passage_perM3, band: feed.band_kPa * kilo },
    clutches,
    leaks: perCircuit((circuit) => leaksFrom(sheet, circuit)),
    lipHardness: perCircuit(() => 0),
    valveFade: perCircuit(() => 0),
    valveHolds: perCircuit(() => 1),
    lineCommandFactor: 1,
    viscosityFactor: 1,
    turbineSensorRestRpm: 0,
    cooler: { pressure: cooler.pressure_kPa * kilo, resistance: cooler.resistance_perM3 },
    drive: {
      capacity: converter.capacity,
      stallTorqueRatio: converter.torqueRatio,
      engineInertia: inertia.engine_kgm2,
      turbineInertia: inertia.turbine_kgm2,
      idleRpm: sheet.idle_rpm,
      ratios: { forward: ratios.first, reverse: ratios.reverse, high: ratios.third },
      finalDrive: sheet.finalDrive,
      wheelRadius: vehicle.wheelRadius_m,
      mass: vehicle.mass_kg,
      drag: vehicle.drag_N,
    },
    testPoints: {
      idle: {
        engineRpm: sheet.idle_rpm,
        line: commands.idleLine_kPa * kilo,
        clutch: commands.idleClutch_kPa * kilo,
      },
      load: {
        engineRpm: commands.load_rpm,
        line: commands.loadLine_kPa * kilo,
        clutch: commands.loadClutch_kPa * kilo,
      },
    },
    commands: {
      margin: commands.clutchMargin,
      clutchLeast: commands.clutchLeast_kPa * kilo,
      clutchMost: commands.clutchMost_kPa * kilo,
      lineLead: commands.lineLead_kPa * kilo,
      lineLeast: commands.lineLeast_kPa * kilo,
      reverseFactor: commands.reverseFactor,
    },
    healthy: { clutches, feedArea },
    fluid: 'kv40_cSt' in fluid ? fluidOnSheet(fluid) : fluid,
    applyChart: sheet.applyChart,
  };
}
