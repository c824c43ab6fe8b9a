import { useMemo } from 'preact/hooks';
import { SimShell } from '../shell/SimShell.tsx';
import { Budgets } from './Budgets.tsx';
import { CircuitFigure } from './CircuitFigure.tsx';
import { CrackMap } from './CrackMap.tsx';
import { makeClutchPressure } from './model.ts';
import { PressureChart } from './PressureChart.tsx';
import { sim } from './sim.ts';

/** Each picture reads its own signals, so a control redraws only what depends on it. */
export function ClutchPressure() {
  const model = useMemo(makeClutchPressure, []);
  return (
    <SimShell
      sim={sim}
      model={model}
      picture={({ revealed }) => <PressureChart model={model} revealed={revealed} />}
      below={() => (
        <>
          <CircuitFigure model={model} />
          <Budgets model={model} />
          <div class="pressure-map">
            <CrackMap model={model} />
          </div>
        </>
      )}
    />
  );
}
