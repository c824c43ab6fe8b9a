import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { Columns } from './Columns.tsx';
import { makeModel, type ShelfModel } from './model.ts';
import { sim } from './sim.ts';

const Picture = ({ model, stage }: PictureProps<ShelfModel>) => (
  <Columns model={model} shown={stage !== 'predict'} />
);

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
