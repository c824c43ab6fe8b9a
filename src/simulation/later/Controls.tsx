import type { Signal } from '@preact/signals';
import { Fragment } from 'preact';
import { Choice } from '../../ui/Choice.tsx';
import { Slider } from '../../ui/Slider.tsx';
import { Toggle } from '../../ui/Toggle.tsx';
import type { ControlSpec, DrawnControls, Givens, SimModel } from '../sim-spec.ts';

interface ControlsProps<G extends Givens> {
  readonly sim: string;
  readonly controls: readonly ControlSpec<G>[];
  readonly model: SimModel<G>;
  readonly drawn?: DrawnControls<G> | undefined;
}

/** Controls out of their descriptions, each tied to its given. */
export function Controls<G extends Givens>(props: ControlsProps<G>) {
  const { sim, controls, model, drawn } = props;
  return (
    <>
      {controls.map((control) => {
        const id = `${sim}-${control.key}`;
        const draw = drawn?.[control.key];
        if (draw) return <Fragment key={id}>{draw(id)}</Fragment>;
        const given: unknown = model.givens[control.key];
        const { label } = control;
        // Named one by one, not spread: `key` is the framework's own word for something else.
        switch (control.kind) {
          case 'number': {
            const { quantity, min, max, step, words } = control;
            const value = given as Signal<number>;
            return <Slider key={id} {...{ id, label, value, quantity, min, max, step, words }} />;
          }
          case 'choice': {
            const { options, as } = control;
            const value = given as Signal<string>;
            return <Choice key={id} {...{ id, label, value, options, as }} />;
          }
          case 'flag': {
            const { on, off } = control;
            const value = given as Signal<boolean>;
            return <Toggle key={id} {...{ id, label, value, on, off }} />;
          }
        }
      })}
    </>
  );
}
