import { useMemo } from 'preact/hooks';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { makeHoldingTorque } from './model.ts';
import { sim } from './sim.ts';
import { TorqueChart } from './TorqueChart.tsx';

const loadTasks = () => import('./tasks.ts');
const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

export function HoldingTorque() {
  const model = useMemo(makeHoldingTorque, []);
  return (
    <SimShell
      sim={sim}
      tasks={loadTasks}
      model={model}
      picture={({ revealed }) => <TorqueChart model={model} revealed={revealed} />}
      below={() => <Later load={loadBelow} props={{ model }} />}
    />
  );
}
