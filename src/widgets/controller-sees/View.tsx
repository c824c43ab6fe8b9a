import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { makeControllerSees } from './model.ts';
import { SlipChart } from './SlipChart.tsx';
import { sim } from './sim.ts';

const loadTasks = () => import('./tasks.ts');
const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

/** One cursor for the picture and the diagram: the state inked is the state under it. */
export function ControllerSees() {
  const model = useMemo(makeControllerSees, []);
  const cursor = useSignal<number | null>(null);
  return (
    <SimShell
      sim={sim}
      tasks={loadTasks}
      model={model}
      picture={({ revealed, stage }) => (
        <SlipChart model={model} revealed={revealed || stage === 'running'} cursor={cursor} />
      )}
      below={() => <Later load={loadBelow} props={{ model, cursor }} />}
    />
  );
}
