import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { Budgets } from './Budgets.tsx';
import { CircuitFigure } from './CircuitFigure.tsx';
import { CrackMap } from './CrackMap.tsx';
import type { PressureModel } from './model.ts';

/** What explains the answer, and would give it away before. */
export function Below({ model, live }: PictureProps<PressureModel>) {
  return (
    <>
      <CircuitFigure model={model} live={live} />
      <Budgets model={model} />
      <div class="pressure-map">
        <CrackMap model={model} />
      </div>
    </>
  );
}
