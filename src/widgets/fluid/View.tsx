import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type FluidModel } from './model.ts';
import { OwnField } from './OwnField.tsx';
import { sim } from './sim.ts';
import { Thickness } from './Thickness.tsx';

const Picture = (props: PictureProps<FluidModel>) => <Thickness kind="kinematic" {...props} />;

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
  drawn: (model) => ({
    own40: (id) => <OwnField id={id} which="own40" model={model} />,
    own100: (id) => <OwnField id={id} which="own100" model={model} />,
  }),
});
