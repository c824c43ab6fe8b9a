import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { bringFirstRun, makeModel, type EngagementModel } from './model.ts';
import { sim } from './sim.ts';
import { SpeedTraces } from './Traces.tsx';

/** Cold beside hot on one time axis; the cursor is shared, so both charts and the words show one moment. */
const Picture = ({ model, revealed, stage }: PictureProps<EngagementModel>) => (
  <SpeedTraces model={model} revealed={revealed || stage === 'running'} />
);

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  hand: () => import('./Hand.tsx'),
  below: () => import('./Below.tsx'),
});

/** What was solved when the page was built comes with the island. */
export function View({ first }: { readonly first: string }) {
  bringFirstRun(first);
  return <Simulation />;
}
