import { computed } from '@preact/signals';
import { airReading, PRINTED_CEILINGS, type AirReading } from '../../car/air-bench.ts';
import type { AirTestTarget } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { carOf, UNITS, type Finding, type Unit } from './units.ts';

export type BenchAirGivens = {
  /** Number of the unit on the bench. */
  unit: string;
  /** What air is put on. */
  target: AirTestTarget;
  /** Whether fluid was put in first. */
  wet: boolean;
  /** [kPa gauge] */
  supply: number;
  /** Diameter of the hole before the gauge [mm] */
  hole: number;
  /** What the learner says it has. */
  named: Finding | 'unsaid';
};

export const START: BenchAirGivens = {
  unit: '1',
  target: 'forward',
  wet: true,
  supply: 275,
  hole: 1.5,
  named: 'unsaid',
};

const SISTER: Readonly<Record<AirTestTarget, AirTestTarget | null>> = {
  forward: 'reverse',
  reverse: 'forward',
  high: 'forward',
  transferSeal: null,
};

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const unit = computed((): Unit => UNITS[Number(givens.unit.value) - 1] ?? (UNITS[0] as Unit));
  const asked = computed(() => ({
    supply: givens.supply.value,
    hole: givens.hole.value,
    wet: givens.wet.value,
  }));
  /** Any place under the air that is set up now. */
  const at = (place: AirTestTarget): AirReading =>
    airReading(carOf(unit.value), place, asked.value);
  const sister = computed(() => SISTER[givens.target.value]);
  return {
    givens,
    apply,
    reset,
    unit,
    at,
    /** Over what is printed the valve stays shut. */
    shut: computed(() => givens.supply.value > PRINTED_CEILINGS.low + 1),
    here: computed(() => at(givens.target.value)),
    /** Another circuit of the same make, under the same air; a whole seal needs none, it holds all. */
    sister,
    beside: computed(() => (sister.value === null ? null : at(sister.value))),
  } satisfies SimModel<BenchAirGivens> & Record<string, unknown>;
}
export type BenchAirModel = ReturnType<typeof makeModel>;
