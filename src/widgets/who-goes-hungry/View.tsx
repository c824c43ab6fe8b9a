import { useMemo } from 'preact/hooks';
import { SimShell } from '../shell/SimShell.tsx';
import { Budgets } from './Budget.tsx';
import { LeftOverFigure, LineFigure } from './Charts.tsx';
import { makeWhoGoesHungry } from './model.ts';
import { Order, TwoReadings } from './Order.tsx';
import { PumpFigure } from './PumpFigure.tsx';
import { sim } from './sim.ts';

/** Each picture reads its own signals, so a control redraws only what depends on it. */
export function WhoGoesHungry() {
  const model = useMemo(makeWhoGoesHungry, []);
  return (
    <SimShell
      sim={sim}
      model={model}
      picture={({ revealed }) => <LineFigure model={model} revealed={revealed} />}
      below={() => (
        <>
          <Order model={model} />
          <TwoReadings model={model} />
          <Budgets model={model} />
          <PumpFigure model={model} />
          <div class="hungry-wide">
            <LeftOverFigure model={model} />
          </div>
        </>
      )}
    />
  );
}
