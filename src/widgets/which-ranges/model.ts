import { computed, signal } from '@preact/signals';
import {
  applyFaults,
  faultKinds,
  type Circuit,
  type FaultId,
  type FaultKind,
  training,
} from '../../engine/index.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { benchOf, readingsOf, type Test } from './patterns.ts';
import { patternOf } from './verdict.ts';

export type RangesGivens = {
  fault: FaultId;
  /** [% of the way from healthy to worst] */
  severity: number;
  /** The circuit that a fault of one circuit sits in. */
  circuit: Circuit;
  /** What the drawing shows: the range engaged, and the test. */
  engaged: Circuit;
  test: Test;
};

const START: RangesGivens = {
  fault: 'transferSeal',
  severity: 40,
  circuit: 'forward',
  engaged: 'forward',
  test: 'hot-load',
};

/** The false sensor is there or not; half of it counts as there. */
export const severityOf = (fault: FaultId, percent: number): number =>
  fault === 'turbineSensor' ? (percent >= 50 ? 1 : 0) : percent / 100;

export const inOneCircuit = (fault: FaultId): boolean => {
  const kind: FaultKind = faultKinds[fault];
  return kind.oneCircuit;
};

export function makeWhichRanges() {
  const givens = {
    fault: signal<FaultId>(START.fault),
    severity: signal(START.severity),
    circuit: signal<Circuit>(START.circuit),
    engaged: signal<Circuit>(START.engaged),
    test: signal<Test>(START.test),
  };
  const apply = (partial: Partial<RangesGivens>) => {
    for (const [key, value] of Object.entries(partial)) {
      (givens[key as keyof RangesGivens] as { value: unknown }).value = value;
    }
  };
  const plant = computed(() => {
    const fault = givens.fault.value;
    const severity = severityOf(fault, givens.severity.value);
    const circuit = givens.circuit.value;
    return applyFaults(training, {
      [fault]: inOneCircuit(fault) ? { severity, circuit } : { severity },
    });
  });
  const readings = computed(() => readingsOf(plant.value));
  const bench = computed(() => benchOf(plant.value));
  return {
    givens,
    apply,
    reset: () => apply(START),
    plant,
    /** All that gauges show, in every range and test; does not move with the drawing's own choices. */
    readings,
    bench,
    pattern: computed(() => patternOf(readings.value, bench.value)),
    /** What the turbine sensor says while the turbine stands [rpm]. */
    sensorAtRest: computed(() => plant.value.turbineSensorRestRpm),
  } satisfies SimModel<RangesGivens> & Record<string, unknown>;
}
export type RangesModel = ReturnType<typeof makeWhichRanges>;
