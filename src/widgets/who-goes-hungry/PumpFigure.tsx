import {
  describePumpRegulator,
  PumpRegulatorDrawing,
  type PumpRegulatorState,
} from '../../drawings/index.ts';
import { printer } from '../../quantity/print.ts';
import { flow, pressure } from '../../quantity/quantities.ts';
import { More } from '../../ui/More.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { PumpModel } from './model.ts';
import { words } from './below-words.en.ts';

/** Full scale of the drawing's tints [kPa]. */
const FULL_SCALE = 1000;
/** From here on the drawing calls the fluid hot [°C]; halfway between the cold state and a hot road. */
const HOT_FROM_C = 60;

export function PumpFigure({ model }: { readonly model: PumpModel }) {
  const print = printer(useUnits());
  const { lineKpa, pumpLmin, clutches, clearancesLmin, boreLmin, leftOverLmin } = model.now.value;
  const state: PumpRegulatorState = {
    line: lineKpa / FULL_SCALE,
    temp: model.givens.temp.value >= HOT_FROM_C ? 'hot' : 'cold',
    flows: {
      pump: pumpLmin,
      toClutches: clutches.forward.feedLmin + clearancesLmin + boreLmin,
      leftOver: leftOverLmin,
    },
    labels: {
      line: print(lineKpa, pressure),
      pump: print(pumpLmin, flow),
      leftOver: print(leftOverLmin, flow),
    },
  };
  return (
    <figure class="pump-drawing">
      <figcaption>
        <strong>{words.pump.name}</strong> {words.pump.how}
      </figcaption>
      <PumpRegulatorDrawing id="who-goes-hungry-pump" state={state} />
      <More label={words.pump.inWords}>
        <p>{describePumpRegulator(state)}</p>
      </More>
    </figure>
  );
}
