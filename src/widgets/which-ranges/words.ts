import { severityOf, sitsInOneCircuit } from '../../car/car.ts';
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import {
  COLD_TESTS,
  HOT_TESTS,
  SHOP_TESTS,
  lacksFriction,
  type Pattern,
  type ShopTest,
  type Verdict,
} from '../../car/shop-tests.ts';
import { fluidVolume } from '../../quantity/part-quantities.ts';
import { listOf } from '../../quantity/lists.ts';
import { multiple } from '../../quantity/part-quantities.ts';
import { CIRCUITS, faultAmount, type Circuit, type FaultId } from '../../engine/index.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { length, temperature, percent } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { words as names } from '../../car/words.en.ts';
import { type RangesModel } from './model.ts';

export const rangeNames: Readonly<Record<Circuit, string>> = {
  forward: 'Forward',
  reverse: 'Reverse',
  high: 'High',
};

/** Which test a column is, in full: "hot (100 °C), 1500 rpm under load". */
export function testWords(test: ShopTest, system: UnitSystem): string {
  const cold = COLD_TESTS.includes(test);
  const at = format(cold ? COLD_C : HOT_C, temperature, system);
  const load = test.endsWith('load') ? '1500 rpm under load' : 'idle in gear';
  return `${cold ? 'cold' : 'hot'} (${at}), ${load}`;
}

const measures: Partial<Record<FaultId, (amount: number, system: UnitSystem) => string>> = {
  transferSeal: (mm, system) => format(mm, length, system),
  pistonSeal: (mm, system) => format(mm, length, system),
  regulatorBore: (mm, system) => format(mm, length, system),
  sealingRings: (um, system) => format(um / 1000, length, system),
  openPort: (mm, system) => format(mm, length, system),
  filter: (times) => `${formatNumber(times, multiple, 'si')} times as hard to draw through`,
  lowFluid: (litres, system) => format(litres, fluidVolume, system),
  thinFluid: (share) => `${format(share * 100, percent, 'si')} of its viscosity left`,
  feedRestriction: (share) => `${format(share * 100, percent, 'si')} of the hole left`,
  frictionWear: (share) => `${format(share * 100, percent, 'si')} of the friction left`,
  pressureControl: (share) => `${format(share * 100, percent, 'si')} of what is commanded`,
};

/** "Worn sealing rings, reverse, 0.12 mm", or a healthy transmission. */
export function faultWords(model: RangesModel, system: UnitSystem): string {
  const { fault, severity, circuit } = model.givens;
  const id = fault.value;
  const share = severityOf(id, severity.value);
  if (share === 0) return 'A healthy transmission';
  const where = sitsInOneCircuit(id) ? `, ${circuit.value}` : '';
  const amount = measures[id]?.(faultAmount(id, share), system);
  return `${names.faults[id]}${where}${amount === undefined ? '' : `, ${amount}`}`;
}

const worstOf = (words: readonly Verdict[]): Verdict =>
  words.includes('gone') ? 'gone' : words.includes('low') ? 'low' : 'ok';

/** What the gauges say at one temperature: "forward and reverse low", "all right". */
function halfWords(pattern: Pattern, tests: readonly ShopTest[]): string {
  const at = (words: Readonly<Record<ShopTest, Verdict>>): Verdict =>
    worstOf(tests.map((test) => words[test]));
  const said: string[] = [];
  const line = at(pattern.taps.line);
  if (line !== 'ok') said.push(`line ${line}`);
  for (const word of ['low', 'gone'] as const) {
    const names = CIRCUITS.filter((circuit) => at(pattern.taps[circuit]) === word);
    if (names.length > 0)
      said.push(`${names.length === 3 ? 'every clutch' : listOf(names)} ${word}`);
  }
  return said.length === 0 ? 'every gauge reads right' : said.join(', ');
}

/** What shows besides pressure, for the faults that a gauge alone would miss. */
function besides(model: RangesModel): string {
  const pattern = model.pattern.value;
  const leaks = Object.entries(pattern.air).filter(([, word]) => word === 'leaks');
  // In every range and test: a little lost pressure costs torque too, more than its own share.
  const weak = lacksFriction(pattern);
  const said: string[] = [];
  if (weak) said.push('The pressure is there and the plates still carry less torque.');
  if (model.sensorAtRest.value > 0) {
    said.push(`The turbine sensor reads ${model.sensorAtRest.value} rpm at rest.`);
  }
  const dry = SHOP_TESTS.filter((test) => pattern.leftOver[test] !== 'ok');
  if (dry.length > 0 && said.length === 0) {
    const cold = dry.every((test) => COLD_TESTS.includes(test));
    const hot = dry.every((test) => HOT_TESTS.includes(test));
    said.push(`The cooler runs short ${cold ? 'cold' : hot ? 'hot' : 'cold and hot'}.`);
  }
  if (leaks.length > 0) {
    const names = leaks.map(([target]) => (target === 'transferSeal' ? 'transfer seal' : target));
    said.push(
      `Air finds it at the ${listOf(names)}${leaks[0]?.[0] === 'transferSeal' ? '' : ' circuit'}.`,
    );
  }
  return said.join(' ');
}

/** The sentence under the table: the pattern in words. */
export function says(model: RangesModel, system: UnitSystem): string {
  const pattern = model.pattern.value;
  const [cold, hot] = [halfWords(pattern, COLD_TESTS), halfWords(pattern, HOT_TESTS)];
  const halves = cold === hot ? `Cold and hot alike: ${cold}.` : `Cold: ${cold}. Hot: ${hot}.`;
  return `${faultWords(model, system)}. ${halves} ${besides(model)}`.trim();
}
