/** A state out of a link, for somebody who has the link and not the simulation before him: its values by the names of their controls. */
import { format } from '../quantity/print.ts';
import { textFor, type UnitSystem } from '../quantity/unit-system.ts';
import { parseLink, type LinkValue } from '../ui/link-state.ts';
import { linkSchema } from './later/link-schema.ts';
import type { ControlSpec, Givens, SimModel, SimSpec } from './sim-spec.ts';

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
  const [version, ...pairs] = state.split('~');
  if (version !== String(sim.linkVersion)) return [];
  const set = new Set(pairs.map((pair) => pair.split('.')[0]));
  const { values } = parseLink(linkSchema(sim, {}, system), `?${sim.id}=${state}`);
  return sim.controls
    .filter(({ key }) => set.has(key))
    .map((control) => ({
      label: textFor(control.label, system),
      value: valueWords(control, values[control.key], system),
    }))
    .filter(({ value }) => value !== '');
}

/** Empty where the link gave what the control cannot take. */
function valueWords(
  control: ControlSpec<Givens>,
  value: LinkValue | undefined,
  system: UnitSystem,
): string {
  switch (control.kind) {
    case 'number':
      return Number.isFinite(value) ? format(Number(value), control.quantity, system) : '';
    case 'choice': {
      const option = control.options.find((one) => one.value === value);
      return option ? textFor(option.words, system) : '';
    }
    case 'flag':
      return value === true ? control.on : control.off;
  }
}
