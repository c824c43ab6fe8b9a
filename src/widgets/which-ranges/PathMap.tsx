import {
  describeHydraulicPath,
  HydraulicPathDrawing,
  type HydraulicPathState,
  type PathCircuitState,
} from '../../drawings/index.ts';
import { CIRCUITS, litresPerMinute, type Circuit } from '../../engine/index.ts';
import { More } from '../../ui/More.tsx';
import { printer } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { inOneCircuit, severityOf, type RangesModel } from './model.ts';
import { testOf } from './patterns.ts';
import { rangeNames, testWords } from './words.ts';

/** Full scale of the drawing's tints [Pa]: the line command under load. */
const FULL_SCALE = 1e6;

/** The whole path with the fault ringed, for the range and test chosen. */
export function PathMap({ model }: { readonly model: RangesModel }) {
  const system = useUnits();
  const print = printer(system);
  const { givens, readings } = model;
  const test = givens.test.value;
  const engaged = givens.engaged.value;
  const fault = givens.fault.value;
  const { tempC, need } = testOf[test];
  const { states, torque } = readings.value[test];
  const state = states[engaged];
  const applied = state.circuits[engaged];
  const circuitOf = (circuit: Circuit): PathCircuitState =>
    circuit === engaged && applied
      ? {
          pressure: applied.pressure / FULL_SCALE,
          label: print(applied.pressure / 1e3, pressure),
          applied: true,
          holds: torque[engaged] >= need.torque,
          feed: litresPerMinute(applied.feed),
        }
      : { pressure: 0, label: print(0, pressure), applied: false };
  const [forward, reverse, high] = CIRCUITS.map(circuitOf) as [
    PathCircuitState,
    PathCircuitState,
    PathCircuitState,
  ];
  const drawn: HydraulicPathState = {
    line: {
      pressure: state.linePressure / FULL_SCALE,
      label: print(state.linePressure / 1e3, pressure),
    },
    circuits: { forward, reverse, high },
    temp: tempC >= 60 ? 'hot' : 'cold',
    flows: {
      pump: litresPerMinute(state.pumpFlow),
      leftOver: litresPerMinute(state.leftOver),
    },
    faults:
      severityOf(fault, givens.severity.value) > 0
        ? [{ id: fault, circuit: inOneCircuit(fault) ? givens.circuit.value : undefined }]
        : [],
  };
  return (
    <figure class="ranges-map">
      <figcaption>
        <strong>The map:</strong> {rangeNames[engaged].toLowerCase()} engaged,{' '}
        {testWords(test, system)}. The ring marks the fault.
      </figcaption>
      <HydraulicPathDrawing id="which-ranges-map" state={drawn} />
      <More label="The drawing in words">
        <p>{describeHydraulicPath(drawn)}</p>
      </More>
    </figure>
  );
}
