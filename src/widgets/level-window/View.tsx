import { GEARS_MM, MARK_MM, MIDDLE_MM } from '../../car/pan.ts';
import { PanLevelDrawing } from '../../drawings/pan-level/PanLevelDrawing.tsx';
import { printer } from '../../quantity/print.ts';
import { percent, temperature } from '../../quantity/quantities.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { makeModel, type LevelModel } from './model.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

/** Under this the fluid is tinted cold, above that hot [°C]. */
const TINT = { cold: 40, hot: 90 };

function Picture({ model }: PictureProps<LevelModel>) {
  const print = printer(useUnits());
  const temp = model.givens.temp.value;
  const { middleMm, mouthMm } = model.level.value;
  const { air } = model.pickUp.value;
  return (
    <div class="level-pan">
      <PanLevelDrawing
        id="level-window-pan"
        state={{
          middleMm,
          mouthMm,
          minMm: MIDDLE_MM - MARK_MM,
          maxMm: MIDDLE_MM + MARK_MM,
          gearsMm: GEARS_MM,
          air,
          temp: temp < TINT.cold ? 'cold' : temp > TINT.hot ? 'hot' : undefined,
          labels: {
            level: words.now({ temp: print(temp, temperature) }),
            air: print(100 * air, percent),
          },
        }}
      />
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
