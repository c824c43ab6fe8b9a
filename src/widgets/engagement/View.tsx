import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { SimShell } from '../shell/SimShell.tsx';
import { makeEngagement } from './model.ts';
import { Player } from './Player.tsx';
import { sim } from './sim.ts';
import { PressureTraces, SpeedTraces } from './Traces.tsx';

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
      below={() => (
        <>
          <Player model={model} cursor={cursor} />
          <PressureTraces model={model} cursor={cursor} />
        </>
      )}
    />
  );
}
