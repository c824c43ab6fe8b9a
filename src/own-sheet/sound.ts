/** What the engine makes of a sheet: the readings of the sound car of it, and what does not go together on it. */
import { makeCar } from '../car/car.ts';
import { engage } from '../car/engage.ts';
import { kPaFor, needOf, stalledTorque } from '../car/need.ts';
import { SHOP_TESTS, shopReadings, TAPS, TENTH } from '../car/shop-tests.ts';
import { TEST_RPM } from '../diagnosis/read-subject.ts';
import {
  circuitOf,
  CIRCUITS,
  plantFromSheet,
  stallSpeed,
  trainingStory,
  type TransmissionSheet,
} from '../engine/index.ts';
import { RANGES, WARM_C, type Remark, type Sound } from './sound-car.ts';

const each = <K extends string, V>(keys: readonly K[], of: (key: K) => V): Record<K, V> =>
  Object.fromEntries(keys.map((key) => [key, of(key)])) as Record<K, V>;
const WARMS = ['cold', 'hot'] as const;

/** A test at another speed than the sheet's own by more than this is worth a word [rpm]. */
const APART_RPM = 50;

/** Throws where the engine does not settle on the numbers of a sheet. */
export function soundOf(sheet: TransmissionSheet): Sound {
  const plant = plantFromSheet(sheet);
  const car = makeCar({ transmission: plant });
  const readings = shopReadings(car);
  const { drive, commands } = plant;
  const taps = each(TAPS, (tap) =>
    each(SHOP_TESTS, (test) => {
      const { ranges, taps: read } = readings[test];
      const wanted =
        tap === 'line'
          ? Math.min(...CIRCUITS.map((circuit) => ranges[circuit].lineCommandKpa))
          : ranges[tap].clutchCommandKpa;
      return { reads: read[tap], wanted };
    }),
  );
  const stops = each(RANGES, (range) =>
    each(WARMS, (warm) => engage(car, { tempC: WARM_C[warm], range }).stoppedAfter),
  );
  const holds = each(CIRCUITS, (circuit) =>
    each(WARMS, (warm) => readings[`${warm}-load`].torque[circuit]),
  );
  const firm = needOf('firm', plant);
  const rpm = stallSpeed(drive, trainingStory.throttleMost, drive.idleRpm);
  const torque = stalledTorque(rpm, plant);

  const remarks: Remark[] = [];
  const { first, third } = sheet.ratios;
  if (first <= third) remarks.push({ kind: 'gears', first, third });
  const { idleLine_kPa: idle, loadLine_kPa: load, load_rpm: loadRpm } = sheet.commands;
  if (loadRpm <= sheet.idle_rpm)
    remarks.push({ kind: 'loadSpeed', idleRpm: sheet.idle_rpm, loadRpm });
  if (idle > load) remarks.push({ kind: 'lineFalls', idle, load });
  const { spare_L: spareL, fill_L: fillL } = sheet.sump;
  if (spareL >= fillL) remarks.push({ kind: 'spare', spareL, fillL });
  for (const tap of TAPS) {
    const low = SHOP_TESTS.filter((test) => taps[tap][test].reads < TENTH * taps[tap][test].wanted);
    // Hot at idle says the most, so it is named where several are short.
    const test = low.find((one) => one === 'hot-idle') ?? low[0];
    if (test !== undefined) remarks.push({ kind: 'short', tap, test, ...taps[tap][test] });
  }
  for (const range of RANGES) {
    const circuit = circuitOf[range];
    const factor = range === 'reverse' ? commands.reverseFactor : 1;
    const most = (commands.clutchMost * factor) / 1e3;
    const needs = kPaFor(torque, plant, circuit);
    if (needs > most) remarks.push({ kind: 'stall', range, torque, needs, most });
    const never = WARMS.filter((warm) => stops[range][warm] === null);
    const [warm] = never;
    if (warm !== undefined) remarks.push({ kind: 'neverStops', range, warm });
  }
  if (Math.abs(sheet.idle_rpm - TEST_RPM.idle) > APART_RPM)
    remarks.push({ kind: 'idleApart', own: sheet.idle_rpm, tested: TEST_RPM.idle });
  if (Math.abs(loadRpm - TEST_RPM.load) > 2 * APART_RPM)
    remarks.push({ kind: 'loadApart', own: loadRpm, tested: TEST_RPM.load });

  return {
    taps,
    stops,
    holds,
    gives: { load: { rpm: firm.engineRpm, torque: firm.torqueNm }, stall: { rpm, torque } },
    remarks,
  };
}
