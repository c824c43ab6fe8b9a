import { useMemo } from 'preact/hooks';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { DriveChart } from './DriveChart.tsx';
import { makeWarmUp } from './model.ts';
import { sim } from './sim.ts';

const loadTasks = () => import('./tasks.ts');
const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

export function WarmUpDrive() {
  const model = useMemo(makeWarmUp, []);
  return (
    <SimShell
      sim={sim}
      tasks={loadTasks}
      model={model}
      picture={() => <DriveChart model={model} />}
      below={() => <Later load={loadBelow} props={{ model }} />}
    />
  );
}
