import type { Signal } from '@preact/signals';
import { Fragment } from 'preact';
import { Choice, type ChoiceOption } from '../../ui/Choice.tsx';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { Slider } from '../../ui/Slider.tsx';
import { Toggle } from '../../ui/Toggle.tsx';
import { textFor } from '../../quantity/unit-system.ts';
import type { ControlSpec, DrawnControls, Givens, SimModel, SimOption } from '../sim-spec.ts';

interface ControlsProps<G extends Givens> {
  readonly sim: string;
  readonly controls: readonly ControlSpec<G>[];
  readonly model: SimModel<G>;
  readonly system: UnitSystem;
  readonly drawn?: DrawnControls<G> | undefined;
}

/** Controls out of their descriptions, each tied to its given. */
export function Controls<G extends Givens>(props: ControlsProps<G>) {
  const { sim, controls, model, system, drawn } = props;
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
            const { as } = control;
            const options = control.options.map((option) => printed(option, system));
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

const printed = ({ value, words, note }: SimOption, system: UnitSystem): ChoiceOption => ({
  value,
  words: textFor(words, system),
  ...(note === undefined ? {} : { note: textFor(note, system) }),
});
