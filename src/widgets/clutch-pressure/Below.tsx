import { Budgets } from './Budgets.tsx';
import { CircuitFigure } from './CircuitFigure.tsx';
import { CrackMap } from './CrackMap.tsx';
import type { PressureModel } from './model.ts';

/** What explains the answer, and would give it away before. */
export function Below({ model }: { readonly model: PressureModel }) {
  return (
    <>
      <CircuitFigure model={model} />
      <Budgets model={model} />
      <div class="pressure-map">
        <CrackMap model={model} />
      </div>
    </>
  );
}
