import { severityOf, sitsInOneCircuit } from '../../car/car.ts';
import { conditionsOf, needIn } from '../../car/shop-tests.ts';
import {
  describeHydraulicPath,
  HydraulicPathDrawing,
  type HydraulicPathState,
  type PathCircuitState,
} from '../../drawings/index.ts';
import { CIRCUITS, training, type Circuit } from '../../engine/index.ts';
import { More } from '../../ui/More.tsx';
import { printer } from '../../quantity/print.ts';
import { pressure, speed, temperature } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { RangesModel } from './model.ts';
import { words } from './below-words.en.ts';

/** Full scale of the drawing's tints [kPa]: the line command under load. */
const FULL_SCALE = 1e3;

/** The whole path with the fault ringed, for the range and test chosen. */
export function PathMap({ model }: { readonly model: RangesModel }) {
  const system = useUnits();
  const print = printer(system);
  const { givens, readings } = model;
  const test = givens.test.value;
  const engaged = givens.engaged.value;
  const fault = givens.fault.value;
  const { tempC } = conditionsOf[test];
  const { ranges, torque } = readings.value[test];
  const state = ranges[engaged];
  const applied = state.clutches[engaged];
  const circuitOf = (circuit: Circuit): PathCircuitState =>
    circuit === engaged
      ? {
          pressure: applied.kPa / FULL_SCALE,
          label: print(applied.kPa, pressure),
          applied: true,
          holds: torque[engaged] >= needIn(test).torqueNm,
          feed: applied.feedLmin,
        }
      : { pressure: 0, label: print(0, pressure), applied: false };
  const [forward, reverse, high] = CIRCUITS.map(circuitOf) as [
    PathCircuitState,
    PathCircuitState,
    PathCircuitState,
  ];
  const drawn: HydraulicPathState = {
    line: {
      pressure: state.lineKpa / FULL_SCALE,
      label: print(state.lineKpa, pressure),
    },
    circuits: { forward, reverse, high },
    temp: tempC >= 60 ? 'hot' : 'cold',
    flows: {
      pump: state.pumpLmin,
      leftOver: state.leftOverLmin,
    },
    faults:
      severityOf(fault, givens.severity.value) > 0
        ? [{ id: fault, circuit: sitsInOneCircuit(fault) ? givens.circuit.value : undefined }]
        : [],
  };
  const shown = words.tests[test]({
    temp: print(tempC, temperature),
    speed: print(training.testPoints.load.engineRpm, speed),
  });
  return (
    <figure class="ranges-map">
      <figcaption>
        <strong>{words.map.name}</strong> {words.map.shows[engaged]({ test: shown })}
      </figcaption>
      <HydraulicPathDrawing id="which-ranges-map" state={drawn} />
      <More label={words.map.inWords}>
        <p>{describeHydraulicPath(drawn)}</p>
      </More>
    </figure>
  );
}
