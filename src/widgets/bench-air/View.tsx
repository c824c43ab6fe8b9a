import { AirRigDrawing } from '../../drawings/air-rig/AirRigDrawing.tsx';
import { printer } from '../../quantity/print.ts';
import { length, percent, pressure } from '../../quantity/quantities.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { Bars } from './Bars.tsx';
import { makeModel, type BenchAirModel } from './model.ts';
import { sim } from './sim.ts';

function Picture({ model }: PictureProps<BenchAirModel>) {
  const print = printer(useUnits());
  const { givens, here, shut } = model;
  const { held, ways, thud } = here.value;
  const { rings, pistonSeal, openPort, transferSeal } = ways;
  return (
    <div class="bench-air">
      <AirRigDrawing
        id="bench-air-rig"
        state={{
          part: givens.target.value === 'transferSeal' ? 'seal' : 'circuit',
          held: shut.value ? null : held,
          wet: givens.wet.value,
          applied: thud && !shut.value,
          leaks: {
            ...(rings && { rings }),
            ...(pistonSeal && { pistonSeal }),
            ...(openPort && { openPort }),
            ...(transferSeal && { transferSeal }),
          },
          labels: {
            supply: print(givens.supply.value, pressure),
            hole: print(givens.hole.value, length),
            held: print(held, percent),
          },
        }}
      />
      <Bars model={model} />
    </div>
  );
}

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
