import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type ProofModel } from './model.ts';
import { Rows } from './Rows.tsx';
import { sim } from './sim.ts';

const Picture = ({ model, stage }: PictureProps<ProofModel>) => (
  <Rows model={model} shown={stage !== 'predict'} />
);

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
