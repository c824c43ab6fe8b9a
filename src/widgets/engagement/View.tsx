import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { makeEngagement } from './model.ts';
import { sim } from './sim.ts';
import { SpeedTraces } from './Traces.tsx';

const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

/** Cold beside hot on one time axis; the cursor is shared, so both charts and the words show one moment. */
export function EngagementView() {
  const model = useMemo(makeEngagement, []);
  const cursor = useSignal<number | null>(null);
  return (
    <SimShell
      sim={sim}
      model={model}
      picture={({ revealed, stage }) => (
        <SpeedTraces model={model} revealed={revealed || stage === 'running'} cursor={cursor} />
      )}
      below={() => <Later load={loadBelow} props={{ model, cursor }} />}
    />
  );
}
