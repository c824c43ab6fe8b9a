import { GEARS_MM, litresOf, MARK_MM, MIDDLE_MM } from '../../car/pan.ts';
import { PanLevelDrawing } from '../../drawings/pan-level/PanLevelDrawing.tsx';
import { printer } from '../../quantity/print.ts';
import { percent, temperature } from '../../quantity/quantities.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { makeModel, type LevelModel } from './model.ts';
import { OFF, sim } from './sim.ts';
import { words } from './words.en.ts';

/** Under this the fluid is tinted cold, above that hot [°C]. */
const TINT = { cold: 40, hot: 90 };

const tempAt = (share: number): number => Math.round(TEMP.min + share * (TEMP.max - TEMP.min));
/** To the control's own stops, as far as it goes [L]. */
const offAt = (litres: number): number =>
  Math.min(OFF.max, Math.max(OFF.min, Math.round(litres * 10) / 10));

function Picture({ model, live }: PictureProps<LevelModel>) {
  const print = printer(useUnits());
  const { off, temp: given } = model.givens;
  const temp = given.value;
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
          thermometer: (temp - TEMP.min) / (TEMP.max - TEMP.min),
          temp: temp < TINT.cold ? 'cold' : temp > TINT.hot ? 'hot' : undefined,
          labels: {
            level: words.now({ temp: print(temp, temperature) }),
            air: print(100 * air, percent),
          },
        }}
        onLevel={
          live('off')
            ? (raisedMm) => (off.value = offAt(off.value + litresOf(raisedMm)))
            : undefined
        }
        onThermometer={live('temp') ? (share) => (given.value = tempAt(share)) : undefined}
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
