import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { Bars } from './Bars.tsx';
import { makeModel, type OpenModel } from './model.ts';
import { sim } from './sim.ts';

const Picture = ({ model, stage }: PictureProps<OpenModel>) => (
  <Bars model={model} shown={stage !== 'predict'} />
);

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
