import { useMemo } from 'preact/hooks';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { LineFigure } from './Charts.tsx';
import { makeWhoGoesHungry } from './model.ts';
import { sim } from './sim.ts';

const loadTasks = () => import('./tasks.ts');
const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

/** Each picture reads its own signals, so a control redraws only what depends on it. */
export function WhoGoesHungry() {
  const model = useMemo(makeWhoGoesHungry, []);
  return (
    <SimShell
      sim={sim}
      tasks={loadTasks}
      model={model}
      picture={({ revealed }) => <LineFigure model={model} revealed={revealed} />}
      below={() => <Later load={loadBelow} props={{ model }} />}
    />
  );
}
