import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { SimShell } from '../shell/SimShell.tsx';
import { makeControllerSees } from './model.ts';
import { Score, SlipChart, StateDiagram } from './Pictures.tsx';
import { sim } from './sim.ts';

/** One cursor for the picture and the diagram: the state inked is the state under it. */
export function ControllerSees() {
  const model = useMemo(makeControllerSees, []);
  const cursor = useSignal<number | null>(null);
  return (
    <SimShell
      sim={sim}
      model={model}
      picture={({ revealed, stage }) => (
        <SlipChart model={model} revealed={revealed || stage === 'running'} cursor={cursor} />
      )}
      below={() => (
        <>
          <Score model={model} />
          <StateDiagram model={model} cursor={cursor} />
        </>
      )}
    />
  );
}
