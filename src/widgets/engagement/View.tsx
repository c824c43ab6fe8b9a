import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type EngagementModel } from './model.ts';
import { sim } from './sim.ts';
import { SpeedTraces } from './Traces.tsx';

/** Cold beside hot on one time axis; the cursor is shared, so both charts and the words show one moment. */
const Picture = ({ model, revealed, stage }: PictureProps<EngagementModel>) => (
  <SpeedTraces model={model} revealed={revealed || stage === 'running'} />
);

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  hand: () => import('./Hand.tsx'),
  below: () => import('./Below.tsx'),
});
