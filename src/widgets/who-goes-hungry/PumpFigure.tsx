import {
  describePumpRegulator,
  PumpRegulatorDrawing,
  type PumpRegulatorState,
} from '../../drawings/index.ts';
import { More } from '../../ui/More.tsx';
import { printer } from '../../quantity/print.ts';
import { flow, pressure } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { HungryModel } from './model.ts';

/** Full scale of the drawing's tints [kPa]. */
const FULL_SCALE = 1000;
/** From here on the drawing calls the fluid hot [°C]; halfway between the cold state and a hot road. */
const HOT_FROM_C = 60;

export function PumpFigure({ model }: { readonly model: HungryModel }) {
  const print = printer(useUnits());
  const { line, flows } = model.now.value;
  const state: PumpRegulatorState = {
    line: line / FULL_SCALE,
    temp: model.givens.temp.value >= HOT_FROM_C ? 'hot' : 'cold',
    flows: {
      pump: flows.delivered,
      toClutches: flows.clutch + flows.clearances + flows.bore,
      leftOver: flows.leftOver,
    },
    labels: {
      line: print(line, pressure),
      pump: print(flows.delivered, flow),
      leftOver: print(flows.leftOver, flow),
    },
  };
  return (
    <figure class="hungry-drawing">
      <figcaption>
        <strong>Pump and regulator:</strong> the valve lets go of what the line can spare.
      </figcaption>
      <PumpRegulatorDrawing id="who-goes-hungry-pump" state={state} />
      <More label="The drawing in words">
        <p>{describePumpRegulator(state)}</p>
      </More>
    </figure>
  );
}
