import { simulationView } from '../../simulation/simulation-view.tsx';
import { Half } from './Half.tsx';
import { makeModel } from './model.ts';
import { Picture } from './Picture.tsx';
import { sim } from './sim.ts';

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
  drawn: (model) => ({
    inside: (id) => <Half {...{ id, half: 'inside', model }} />,
    after: (id) => <Half {...{ id, half: 'after', model }} />,
  }),
});
