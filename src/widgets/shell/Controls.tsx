import type { Signal } from '@preact/signals';
import { Choice } from '../../ui/Choice.tsx';
import { Slider } from '../../ui/Slider.tsx';
import { Toggle } from '../../ui/Toggle.tsx';
import type { ControlSpec, Givens, SimModel } from './sim-spec.ts';

interface ControlsProps<G extends Givens> {
  readonly sim: string;
  readonly controls: readonly ControlSpec<G>[];
  readonly model: SimModel<G>;
}

/** Controls out of their descriptions, each tied to its given. */
export function Controls<G extends Givens>({ sim, controls, model }: ControlsProps<G>) {
  return (
    <>
      {controls.map((control) => {
        const id = `${sim}-${control.key}`;
        const given: unknown = model.givens[control.key];
        switch (control.kind) {
          case 'number':
            return <Slider key={id} {...control} id={id} value={given as Signal<number>} />;
          case 'choice':
            return <Choice key={id} {...control} id={id} value={given as Signal<string>} />;
          case 'flag':
            return <Toggle key={id} {...control} id={id} value={given as Signal<boolean>} />;
        }
      })}
    </>
  );
}
