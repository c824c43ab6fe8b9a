import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { ElectronicRangeDrawing, MechanicalRangeDrawing } from '../../drawings/index.ts';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { makeTwoWays, type WaysModel } from './model.ts';
import { sim } from './sim.ts';

const loadTasks = () => import('./tasks.ts');
const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

/** Side by side where there is room. On a phone one at a time, so that it can be read and stays in sight. */
function Pair({ model }: { readonly model: WaysModel }) {
  const side = useSignal<'wire' | 'cable'>('wire');
  const show = (one: 'wire' | 'cable', words: string) => (
    <button
      type="button"
      class="quiet"
      aria-pressed={side.value === one}
      onClick={() => (side.value = one)}
    >
      {words}
    </button>
  );
  return (
    <div class={`ways-pair ways-${side.value}`}>
      <div class="ways-side" role="group" aria-label="Which one to see">
        {show('wire', 'By wire')}
        {show('cable', 'By cable')}
      </div>
      <figure>
        <figcaption>
          <strong>By wire</strong> (electronic)
        </figcaption>
        <ElectronicRangeDrawing id="two-ways-electronic" state={model.electronic.value} />
      </figure>
      <figure>
        <figcaption>
          <strong>By cable</strong> (mechanical)
        </figcaption>
        <MechanicalRangeDrawing id="two-ways-mechanical" state={model.mechanical.value} />
      </figure>
    </div>
  );
}

/** Both boxes in the same state, so that what differs is who can do something about it. */
export function TwoWays() {
  const model = useMemo(makeTwoWays, []);
  return (
    <SimShell
      sim={sim}
      tasks={loadTasks}
      model={model}
      picture={() => <Pair model={model} />}
      below={() => <Later load={loadBelow} props={{ model }} />}
    />
  );
}
