import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { Budgets } from './Budgets.tsx';
import { LeftOver } from './LeftOver.tsx';
import type { PumpModel } from './model.ts';
import { Order, TwoReadings } from './Order.tsx';
import { PumpFigure } from './PumpFigure.tsx';

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: PictureProps<PumpModel>) {
  return (
    <>
      <Order model={model} />
      <TwoReadings model={model} />
      <Budgets model={model} />
      <PumpFigure model={model} />
      <div class="pump-wide">
        <LeftOver model={model} />
      </div>
    </>
  );
}
