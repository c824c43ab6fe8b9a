import { circuitFlows } from '../../car/circuit-flows.ts';
import { CircuitDrawing, circuitFrom, describeCircuit } from '../../drawings/index.ts';
import { pressure, torque } from '../../quantity/quantities.ts';
import { pulledTo } from '../../simulation/choices/number.ts';
import type { PictureContext } from '../../simulation/sim-spec.ts';
import { More } from '../../ui/More.tsx';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { PressureModel } from './model.ts';
import { words } from './below-words.en.ts';

interface CircuitFigureProps extends Pick<PictureContext, 'live'> {
  readonly model: PressureModel;
}

export function CircuitFigure({ model, live }: CircuitFigureProps) {
  const { now, clutch, holds, need, givens, feedOpen } = model;
  const system = useUnits();
  const { circuit } = words;
  const high = givens.circuit.value === 'high';
  const { lineKpa, lineAtCommand } = now.value;
  const { kPa, holdsNm } = clutch.value;
  const state = circuitFrom(
    {
      lineKpa,
      clutchKpa: kPa,
      flows: circuitFlows(now.value, givens.circuit.value),
      holds: holds.value,
      tempC: givens.temp.value,
      crackMm: givens.crack.value,
      throughSeal: !high,
      feedOpen: feedOpen.value,
    },
    system,
  );
  return (
    <figure class="pressure-circuit">
      <figcaption>
        <strong>{circuit.name}</strong> {high ? circuit.past : circuit.through}
      </figcaption>
      <CircuitDrawing
        id="clutch-pressure-circuit"
        state={state}
        onCrack={!high && live('crack') ? pulledTo(givens.crack) : undefined}
      />
      <dl class="readouts">
        <Readout label={circuit.line} value={lineKpa} quantity={pressure}>
          {lineAtCommand ? circuit.atCommand : circuit.short}
        </Readout>
        <Readout label={circuit.clutch} value={kPa} quantity={pressure}>
          {holds.value ? circuit.holds : circuit.slips}
        </Readout>
        <Readout label={circuit.canHold} value={holdsNm} quantity={torque} />
        <Readout label={circuit.asked} value={need.value.torqueNm} quantity={torque} />
      </dl>
      <More label={circuit.inWords}>
        <p>{describeCircuit(state)}</p>
      </More>
    </figure>
  );
}
