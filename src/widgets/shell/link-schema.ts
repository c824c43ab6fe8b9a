import type { LinkControl, LinkSchema, LinkValues } from '../../ui/link-state.ts';
import { format, type UnitSystem } from '../../ui/quantity.ts';
import type { Givens, SimModel, SimSpec } from './sim-spec.ts';

/** The link's schema, out of the controls as declared and the values the model starts with. */
export function linkSchema<G extends Givens, M extends SimModel<G>>(
  sim: Pick<SimSpec<G, M>, 'id' | 'linkVersion' | 'controls'>,
  model: M,
  system: UnitSystem = 'us',
): LinkSchema {
  const controls = sim.controls.map((control): LinkControl => {
    const { key, label } = control;
    const start: unknown = model.givens[key].peek();
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

/** The controls' values as they stand. */
export function currentValues<G extends Givens>(
  schema: LinkSchema,
  model: SimModel<G>,
): LinkValues {
  return Object.fromEntries(
    schema.controls.map(({ key }) => [key, model.givens[key]?.peek() ?? '']),
  );
}
