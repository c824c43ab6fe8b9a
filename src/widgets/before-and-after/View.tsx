import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type ProofModel } from './model.ts';
import { Rows } from './Rows.tsx';
import { sim } from './sim.ts';
import { bringReadings } from './brought.ts';

const Picture = ({ model, stage }: PictureProps<ProofModel>) => (
  <Rows model={model} shown={stage !== 'predict'} />
);

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});

/** The cars were solved when the page was built, and come with the island. */
export function View({ readings }: { readonly readings: string }) {
  bringReadings(readings);
  return <Simulation />;
}
