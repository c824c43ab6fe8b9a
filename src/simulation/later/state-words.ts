/** A state out of a link, for somebody who has the link and not the simulation before him: its values by the names of their controls. */
import { format } from '../../quantity/print.ts';
import { textFor, type UnitSystem } from '../../quantity/unit-system.ts';
import { readState } from '../../ui/link-state.ts';
import type { ControlSpec, Givens, SimModel, SimSpec } from '../sim-spec.ts';

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
  const { version, pairs } = readState(state);
  if (version !== String(sim.linkVersion)) return [];
  return sim.controls
    .map((control) => ({
      label: textFor(control.label, system),
      value: valueWords(control, new Map(pairs).get(control.key) ?? '', system),
    }))
    .filter(({ value }) => value !== '');
}

/** Empty where the link gave nothing, or what the control cannot take. */
function valueWords(control: ControlSpec<Givens>, text: string, system: UnitSystem): string {
  switch (control.kind) {
    case 'number': {
      const { min, max, quantity } = control;
      const value = text === '' ? Number.NaN : Number(text);
      return Number.isFinite(value)
        ? format(Math.min(max, Math.max(min, value)), quantity, system)
        : '';
    }
    case 'choice': {
      const option = control.options.find(({ value }) => value === text);
      return option ? textFor(option.words, system) : '';
    }
    case 'flag':
      return text === 'yes' ? control.on : text === 'no' ? control.off : '';
  }
}
