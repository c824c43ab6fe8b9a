import { computed } from '@preact/signals';
import { makeCar, oneFault } from '../../car/car.ts';
import { benchOf, patternOf, shopReadings, type ShopTest } from '../../car/shop-tests.ts';
import type { Circuit, FaultId } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type RangesGivens = {
  fault: FaultId;
  /** [% of the way from healthy to worst] */
  severity: number;
  /** The circuit that a fault of one circuit sits in. */
  circuit: Circuit;
  /** What the drawing shows: the range engaged, and the test. */
  engaged: Circuit;
  test: ShopTest;
};

const START: RangesGivens = {
  fault: 'transferSeal',
  severity: 40,
  circuit: 'forward',
  engaged: 'forward',
  test: 'hot-load',
};

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const car = computed(() =>
    makeCar({
      faults: oneFault(givens.fault.value, givens.severity.value, givens.circuit.value),
    }),
  );
  const readings = computed(() => shopReadings(car.value));
  const bench = computed(() => benchOf(car.value));
  return {
    givens,
    apply,
    reset,
    /** All that gauges show, in every range and test; does not move with the drawing's own choices. */
    readings,
    bench,
    pattern: computed(() => patternOf(readings.value, bench.value)),
    /** What the turbine sensor says while the turbine stands [rpm]. */
    sensorAtRest: computed(() => car.value.plant.turbineSensorRestRpm),
  } satisfies SimModel<RangesGivens> & Record<string, unknown>;
}
export type RangesModel = ReturnType<typeof makeModel>;
