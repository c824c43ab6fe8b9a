import { useMemo } from 'preact/hooks';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { makeWhichRanges } from './model.ts';
import { sim } from './sim.ts';
import { Gauges } from './Tables.tsx';

const loadTasks = () => import('./tasks.ts');
const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

export function WhichRanges() {
  const model = useMemo(makeWhichRanges, []);
  return (
    <SimShell
      sim={sim}
      tasks={loadTasks}
      model={model}
      picture={({ revealed }) => <Gauges model={model} revealed={revealed} />}
      below={() => <Later load={loadBelow} props={{ model }} />}
    />
  );
}
