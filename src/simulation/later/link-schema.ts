import { textFor } from '../../quantity/unit-system.ts';
import {
  parseLink,
  type LinkControl,
  type LinkSchema,
  type LinkValues,
} from '../../ui/link-state.ts';
import { format } from '../../quantity/print.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Givens, SimModel, SimSpec } from '../sim-spec.ts';

/**
 * The link's schema, out of the controls as declared and the values the model was made with
 * (`currentValues` of a model nobody has touched).
 */
export function linkSchema<G extends Givens, M extends SimModel<G>>(
  sim: Pick<SimSpec<G, M>, 'id' | 'linkVersion' | 'controls'>,
  defaults: LinkValues,
  system: UnitSystem = 'us',
): LinkSchema {
  const controls = sim.controls.map((control): LinkControl => {
    const { key } = control;
    const label = textFor(control.label, system);
    const start = defaults[key];
    switch (control.kind) {
      case 'number': {
        const { min, max, step, quantity } = control;
        const say = (value: number): string => format(value, quantity, system);
        return { kind: 'number', key, label, min, max, step, default: Number(start), say };
      }
      case 'choice':
        return {
          kind: 'choice',
          key,
          label,
          options: control.options.map(({ value }) => value),
          default: String(start),
        };
      case 'flag':
        return { kind: 'flag', key, label, default: start === true };
    }
  });
  return { id: sim.id, version: sim.linkVersion, controls };
}

/** What a page's address asks of a simulation. */
export const readLink = <G extends Givens, M extends SimModel<G>>(
  sim: Pick<SimSpec<G, M>, 'id' | 'linkVersion' | 'controls'>,
  defaults: LinkValues,
  search: string,
): ReturnType<typeof parseLink> => parseLink(linkSchema(sim, defaults), search);
