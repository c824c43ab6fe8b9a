/** A state out of a link, for somebody who has the link and not the simulation before him: its values by the names of their controls. */
import { format } from '../../quantity/print.ts';
import { textFor, type UnitSystem } from '../../quantity/unit-system.ts';
import { readState, type LinkValue } from '../../ui/link-state.ts';
import type { ControlSpec, Givens, SimModel, SimSpec } from '../sim-spec.ts';
import { linkSchema } from './link-schema.ts';

/** What a simulation is called, and by which names and quantities it is set. */
export type NamedState = Pick<
  SimSpec<Givens, SimModel<Givens>>,
  'id' | 'title' | 'linkVersion' | 'controls'
>;

/**
 * @param state what stands behind the = of the link
 * @returns one entry for each value that the link sets; none for a link of another version, which opens at the usual values
 */
export function stateWords(
  sim: NamedState,
  state: string,
  system: UnitSystem,
): readonly { readonly label: string; readonly value: string }[] {
  const values = readState(linkSchema(sim, {}, system), state);
  return sim.controls.flatMap((control) => {
    const value = values[control.key];
    const said = value === undefined ? '' : valueWords(control, value, system);
    return said === '' ? [] : [{ label: textFor(control.label, system), value: said }];
  });
}

/** What a control stands at, as its page says it; nothing where no choice is called so. */
export function valueWords<G>(
  control: ControlSpec<G>,
  value: LinkValue,
  system: UnitSystem,
): string {
  switch (control.kind) {
    case 'number':
      return format(Number(value), control.quantity, system);
    case 'choice': {
      const option = control.options.find((one) => one.value === value);
      return option ? textFor(option.words, system) : '';
    }
    case 'flag':
      return value === true ? control.on : control.off;
  }
}
