import { causesOf } from '../cases/judge.ts';
import type { Repair } from '../cases/lists.ts';
import type { MadeKey } from '../cases/made-key.ts';
import { makeCase, PLANTS } from '../cases/made.ts';
import { soundReader } from '../cases/sound.ts';
import { stopTraceOf } from '../cases/trace.ts';
import { decodeTable, testOf, type Name } from '../diagnosis/index.ts';
import { applyFaults, type FaultId } from '../engine/index.ts';
import type { BenchCase } from './bench-case.ts';
import { customerOf } from './customer.ts';
import { keyOf } from './case-address.ts';
import { words } from './customer-words.en.ts';

/** What puts a fault right. Common practice, no source. */
export const REPAIR_OF: Readonly<Record<FaultId, Repair>> = {
  transferSeal: 'transferSeal',
  hardLip: 'pistonSeal',
  clutchControl: 'clutchSolenoid',
  sealingRings: 'sealingRings',
  pistonSeal: 'pistonSeal',
  pumpWear: 'pump',
  regulatorBore: 'bore',
  pressureControl: 'pressureControl',
  filter: 'filterFluid',
  lowFluid: 'levelAndLeak',
  thinFluid: 'rightFluid',
  feedRestriction: 'cable',
  openPort: 'openPort',
  frictionWear: 'packs',
  turbineSensor: 'turbineSensor',
};

/** A made case as the page takes it, by the planner's table as text. */
export function benchCaseOf(key: MadeKey, table: string): BenchCase {
  const made = makeCase(key, decodeTable(table));
  const { complaint, asked } = customerOf(made);
  const plant = applyFaults(PLANTS[key.on], made.faults);
  const causes =
    made.classes.length === 0
      ? causesOf({ faults: {}, healthy: true })
      : causesOf({ faults: made.faults });
  const isFaultId = (name: Name): name is FaultId => Object.hasOwn(REPAIR_OF, name);
  const repair = made.classes.flatMap(([{ name }]) => (isFaultId(name) ? [REPAIR_OF[name]] : []));
  return {
    key: keyOf(key),
    transmission: key.on,
    title: words.title({ number: String(key.seed) }),
    car: words.car,
    selection: made.selection,
    complaint,
    asked,
    looks: {},
    // A frosty night is at hand for everybody: whether one is needed would be half the answer.
    coldMorning: true,
    read: made.read,
    sound: soundReader(PLANTS[key.on]),
    trace: (test) => {
      const { value } = made.read(testOf(test));
      return stopTraceOf(plant, test, typeof value === 'number' ? value : null);
    },
    causes,
    decides: [],
    // New fluid and filter go with any of them.
    also: ['filterFluid'],
    repair: repair.length === 0 ? ['none'] : [...new Set(repair)],
  };
}
