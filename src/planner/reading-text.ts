import {
  isNumeric,
  WARMTHS,
  type SetUp,
  type TakenReading,
  type Test,
} from '../diagnosis/index.ts';
import { listOf } from '../quantity/lists.ts';
import { printer } from '../quantity/print.ts';
import { speed, temperature } from '../quantity/quantities.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { printed } from './amounts.ts';
import { words } from './words.en.ts';

/** A flow cup's sample, as data sheets give viscosity [°C]. */
const CUP = 40;

/** What a shop calls a test. */
export function nameOf({ kind, at }: Test, system: UnitSystem): string {
  const print = printer(system);
  return words.tests[kind]({
    circuit: at.circuit === undefined ? '' : words.circuits[at.circuit],
    range: at.range === undefined ? '' : words.ranges[at.range],
    warm: at.warmth === undefined ? '' : words.warmths[at.warmth],
    speed: at.rpm === undefined ? '' : print(at.rpm, speed),
    sample: print(CUP, temperature),
  });
}

/** What has to be done before a test, as a sentence; nothing where all is in place. */
export function needsOf(missing: readonly SetUp[], system: UnitSystem): string {
  const { next, setUps } = words;
  const named = setUps({ hot: printer(system)(WARMTHS.hot.at, temperature) });
  return missing.length === 0
    ? ''
    : next.needs({ setUps: listOf(missing.map((one) => named[one])) });
}

/** What a reading showed. */
export function shownIn({ test, value }: TakenReading, system: UnitSystem): string {
  const { readings, outcomes } = words;
  if (isNumeric(test))
    return value === null ? readings.never : printed(test, value as number, system);
  if (test.kind === 'codes') {
    const codes = value as readonly string[];
    return codes.length === 0 ? readings.noCodes : listOf(codes);
  }
  return outcomes[test.kind][value as string] ?? '';
}
