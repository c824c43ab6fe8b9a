import { CircuitDrawing, describeCircuit, type CircuitState } from '../../drawings/index.ts';
import { More } from '../../ui/More.tsx';
import { printer } from '../../quantity/print.ts';
import { flow, length, pressure, torque } from '../../quantity/quantities.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { PressureModel } from './model.ts';

/** Full scale of the drawing's tints [kPa]: the line command under load. */
const FULL_SCALE = 1000;
/** From here on the drawing calls the fluid hot [°C]; halfway between the cold state and a hot road. */
const HOT_C = 60;

export function CircuitFigure({ model }: { readonly model: PressureModel }) {
  const { now, holds, need, givens } = model;
  const system = useUnits();
  const print = printer(system);
  const high = givens.circuit.value === 'high';
  const { line, clutch, flows, feedOpen, torque: carries } = now.value;
  const state: CircuitState = {
    pressures: { line: line / FULL_SCALE, clutch: clutch / FULL_SCALE },
    flows: {
      pump: flows.delivered,
      clearances: flows.clearances,
      feed: flows.feed,
      rings: flows.rings,
      crack: flows.crack,
      leftOver: flows.leftOver,
    },
    holds: holds.value,
    temp: givens.temp.value >= HOT_C ? 'hot' : 'cold',
    crackMm: high ? 0 : givens.crack.value,
    labels: {
      line: print(line, pressure),
      clutch: print(clutch, pressure),
      crack: print(flows.crack, flow),
      width: print(givens.crack.value, length),
    },
    feedOpen,
  };
  return (
    <figure class="pressure-circuit">
      <figcaption>
        <strong>The circuit:</strong>{' '}
        {high
          ? 'high goes another way round and does not pass through the transfer seal, so the crack cannot reach it. Drawn here with a whole seal.'
          : 'what the crack takes has to come through the feed hole first.'}
      </figcaption>
      <CircuitDrawing id="clutch-pressure-circuit" state={state} />
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
