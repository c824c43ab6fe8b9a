import { CircuitDrawing, circuitFrom, describeCircuit } from '../../drawings/index.ts';
import { More } from '../../ui/More.tsx';
import { pressure, torque } from '../../quantity/quantities.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { pulledTo } from '../../simulation/choices/number.ts';
import type { PictureContext } from '../../simulation/sim-spec.ts';
import type { PressureModel } from './model.ts';

export function CircuitFigure({
  model,
  live,
}: { readonly model: PressureModel } & Pick<PictureContext, 'live'>) {
  const { now, holds, need, givens } = model;
  const system = useUnits();
  const high = givens.circuit.value === 'high';
  const { line, clutch, flows, feedOpen, torque: carries } = now.value;
  const state = circuitFrom(
    {
      lineKpa: line,
      clutchKpa: clutch,
      flows: { ...flows, pump: flows.delivered },
      holds: holds.value,
      tempC: givens.temp.value,
      crackMm: givens.crack.value,
      throughSeal: !high,
      feedOpen,
    },
    system,
  );
  return (
    <figure class="pressure-circuit">
      <figcaption>
        <strong>The circuit:</strong>{' '}
        {high
          ? 'high goes another way round and does not pass through the transfer seal, so the crack cannot reach it. Drawn here with a whole seal.'
          : 'what the crack takes has to come through the feed hole first.'}
      </figcaption>
      <CircuitDrawing
        id="clutch-pressure-circuit"
        state={state}
        onCrack={!high && live('crack') ? pulledTo(givens.crack) : undefined}
      />
      <dl class="readouts">
        <Readout label="Line" value={line} quantity={pressure}>
          {now.value.lineAtCommand ? 'at its command' : 'short of its command'}
        </Readout>
        <Readout label="Clutch" value={clutch} quantity={pressure}>
          {holds.value ? 'holds' : 'slips'}
        </Readout>
        <Readout label="Torque it can hold" value={carries} quantity={torque} />
        <Readout label="Torque asked of it" value={need.value.torque} quantity={torque} />
      </dl>
      <More label="The drawing in words">
        <p>{describeCircuit(state)}</p>
      </More>
    </figure>
  );
}
