import { useSignal } from '@preact/signals';
import { ElectronicRangeDrawing, MechanicalRangeDrawing } from '../../drawings/index.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type WaysModel } from './model.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { wire, cable } = words;

/**
 * Both boxes in the same state, so that what differs is who can do something about it: side by side where there is room.
 * On a phone one at a time, so that it can be read and stays in sight.
 */
function Picture({ model }: PictureProps<WaysModel>) {
  const side = useSignal<'wire' | 'cable'>('wire');
  return (
    <div class={`ways-pair ways-${side.value}`}>
      <div class="ways-side" role="group" aria-label={words.which}>
        {(['wire', 'cable'] as const).map((one) => (
          <button
            key={one}
            type="button"
            class="quiet"
            aria-pressed={side.value === one}
            onClick={() => (side.value = one)}
          >
            {words[one].name}
          </button>
        ))}
      </div>
      <figure>
        <figcaption>
          <strong>{wire.name}</strong> {wire.kind}
        </figcaption>
        <ElectronicRangeDrawing id="two-ways-electronic" state={model.electronic.value} />
      </figure>
      <figure>
        <figcaption>
          <strong>{cable.name}</strong> {cable.kind}
        </figcaption>
        <MechanicalRangeDrawing id="two-ways-mechanical" state={model.mechanical.value} />
      </figure>
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
