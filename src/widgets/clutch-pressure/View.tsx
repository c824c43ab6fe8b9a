import { useMemo } from 'preact/hooks';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { makeClutchPressure } from './model.ts';
import { PressureChart } from './PressureChart.tsx';
import { sim } from './sim.ts';

const loadTasks = () => import('./tasks.ts');
const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

/** Each picture reads its own signals, so a control redraws only what depends on it. */
export function ClutchPressure() {
  const model = useMemo(makeClutchPressure, []);
  return (
    <SimShell
      sim={sim}
      tasks={loadTasks}
      model={model}
      picture={({ revealed, live }) => <PressureChart {...{ model, revealed, live }} />}
      below={({ live }) => <Later load={loadBelow} props={{ model, live }} />}
    />
  );
}
