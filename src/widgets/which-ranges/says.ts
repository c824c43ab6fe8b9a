import { severityOf, sitsInOneCircuit } from '../../car/car.ts';
import {
  COLD_TESTS,
  HOT_TESTS,
  SHOP_TESTS,
  lacksFriction,
  type Pattern,
  type ShopTest,
  type Verdict,
} from '../../car/shop-tests.ts';
import { words as names } from '../../car/words.en.ts';
import { CIRCUITS, faultAmount, type FaultId } from '../../engine/index.ts';
import { listOf } from '../../quantity/lists.ts';
import { fluidVolume, multiple } from '../../quantity/part-quantities.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { length, percent, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { RangesModel } from './model.ts';
import { words } from './words.en.ts';

type Measure = (amount: number, system: UnitSystem) => string;
const { amounts, says: said } = words;

const size: Measure = (mm, system) => amounts.size({ amount: format(mm, length, system) });
const share =
  (say: (p: { amount: string }) => string): Measure =>
  (part, system) =>
    say({ amount: format(100 * part, percent, system) });

/** How bad a fault is, in its own measure; wear of the pump and a false sensor have none that a shop would use. */
const measures: Partial<Record<FaultId, Measure>> = {
  transferSeal: size,
  hardLip: size,
  pistonSeal: size,
  regulatorBore: size,
  openPort: size,
  sealingRings: (um, system) => size(um / 1000, system),
  filter: (times, system) => amounts.times({ amount: formatNumber(times, multiple, system) }),
  lowFluid: (litres, system) => amounts.missing({ amount: format(litres, fluidVolume, system) }),
  thinFluid: share(amounts.viscosity),
  feedRestriction: share(amounts.hole),
  frictionWear: share(amounts.friction),
  pressureControl: share(amounts.command),
  clutchControl: share(amounts.lost),
};

/** The fault as set, with its place and its size. */
export function faultWords({ givens }: RangesModel, system: UnitSystem): string {
  const id = givens.fault.value;
  const severity = severityOf(id, givens.severity.value);
  if (severity === 0) return words.healthy;
  return words.fault({
    fault: names.faults[id],
    clutch: sitsInOneCircuit(id) ? names.clutches[givens.circuit.value] : undefined,
    amount: measures[id]?.(faultAmount(id, severity), system),
  });
}

const worstOf = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.includes('gone') ? 'gone' : verdicts.includes('low') ? 'low' : 'ok';

/** What the gauges say at one temperature: "forward clutch and reverse clutch low". */
function gaugesIn(pattern: Pattern, tests: readonly ShopTest[]): string {
  const at = (verdicts: Readonly<Record<ShopTest, Verdict>>): Verdict =>
    worstOf(tests.map((test) => verdicts[test]));
  const found: string[] = [];
  const line = at(pattern.taps.line);
  if (line !== 'ok') found.push(said.line[line]);
  for (const verdict of ['low', 'gone'] as const) {
    const down = CIRCUITS.filter((circuit) => at(pattern.taps[circuit]) === verdict);
    if (down.length === 0) continue;
    const clutches =
      down.length === CIRCUITS.length
        ? said.everyClutch
        : listOf(down.map((circuit) => names.clutches[circuit]));
    found.push(said.clutches[verdict]({ clutches }));
  }
  return found.length === 0 ? said.allRight : listOf(found);
}

/** What shows besides pressure, for the faults that a gauge alone would miss. */
function besides({ pattern: { value: pattern }, sensorAtRest }: RangesModel, system: UnitSystem) {
  const found: string[] = [];
  // In every range and test: a little lost pressure costs torque too, more than its own share.
  if (lacksFriction(pattern)) found.push(said.friction);
  if (sensorAtRest.value > 0) {
    found.push(said.sensor({ speed: format(sensorAtRest.value, speed, system) }));
  }
  const dry = SHOP_TESTS.filter((test) => pattern.leftOver[test] !== 'ok');
  if (dry.length > 0 && found.length === 0) {
    const cold = dry.every((test) => COLD_TESTS.includes(test));
    const hot = dry.every((test) => HOT_TESTS.includes(test));
    found.push(said.cooler[cold ? 'cold' : hot ? 'hot' : 'both']);
  }
  return found;
}

/** The sentence under the table: the pattern in words. */
export function says(model: RangesModel, system: UnitSystem): string {
  const pattern = model.pattern.value;
  const [cold, hot] = [gaugesIn(pattern, COLD_TESTS), gaugesIn(pattern, HOT_TESTS)];
  return [
    said.fault({ fault: faultWords(model, system) }),
    cold === hot ? said.alike({ gauges: cold }) : said.coldAndHot({ cold, hot }),
    ...besides(model, system),
  ].join(' ');
}
