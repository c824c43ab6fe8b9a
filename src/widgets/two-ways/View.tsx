import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { ElectronicRangeDrawing, MechanicalRangeDrawing } from '../../drawings/index.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { DrawnWhereShown } from '../../ui/DrawnWhereShown.tsx';
import { makeModel, type WaysModel } from './model.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { wire, cable } = words;
/** The style sheet shows the one that fits. */
const LAYOUTS = ['tall', 'wide'] as const;

interface WayProps {
  readonly words: { readonly name: string; readonly kind: string };
  readonly draw: (layout: (typeof LAYOUTS)[number]) => ComponentChildren;
}

/** One kind of range selection, named, upright and wide. */
const Way = ({ words: { name, kind }, draw }: WayProps) => (
  <figure>
    <figcaption>
      <strong>{name}</strong> {kind}
    </figcaption>
    {LAYOUTS.map((layout) => (
      <DrawnWhereShown key={layout} class={`ways-${layout}`} draw={() => draw(layout)} />
    ))}
  </figure>
);

/**
 * Both boxes in the same state, so that what differs is who can do something about it: one above the other where there is room.
 * On a phone one at a time, so that it can be read and stays in sight; a task begins with the one that it is about.
 */
function Picture({ model, stage, live }: PictureProps<WaysModel>) {
  const side = useSignal<'wire' | 'cable'>('wire');
  // Only the task about the car by wire lets the car's movement be chosen.
  const about = stage !== 'tasks' ? null : live('car') ? 'wire' : 'cable';
  useEffect(() => {
    if (about) side.value = about;
  }, [about]);
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
      <Way
        words={wire}
        draw={(layout) => (
          <ElectronicRangeDrawing
            id={`two-ways-electronic-${layout}`}
            state={model.electronic.value}
            layout={layout}
          />
        )}
      />
      <Way
        words={cable}
        draw={(layout) => (
          <MechanicalRangeDrawing
            id={`two-ways-mechanical-${layout}`}
            state={model.mechanical.value}
            layout={layout}
          />
        )}
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
