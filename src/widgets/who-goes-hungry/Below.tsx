import { Budgets } from './Budget.tsx';
import { LeftOverFigure } from './Charts.tsx';
import type { HungryModel } from './model.ts';
import { Order, TwoReadings } from './Order.tsx';
import { PumpFigure } from './PumpFigure.tsx';

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: { readonly model: HungryModel }) {
  return (
    <>
      <Order model={model} />
      <TwoReadings model={model} />
      <Budgets model={model} />
      <PumpFigure model={model} />
      <div class="hungry-wide">
        <LeftOverFigure model={model} />
      </div>
    </>
  );
}
