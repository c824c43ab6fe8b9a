import type { PlannerModel } from './model.ts';
import { words } from './basis-words.en.ts';

interface FromYoursProps {
  readonly model: Pick<PlannerModel, 'basis'>;
}

/** What was worked out from a sheet of one's own says so, and how much of that is assumed. */
export function fromYours({ basis }: Pick<PlannerModel, 'basis'>): string {
  const own = basis.value?.own;
  return own === undefined
    ? ''
    : words.fromYours({
        name: own.name,
        yours: String(own.yours),
        assumed: String(own.of - own.yours),
      });
}

export function FromYours({ model }: FromYoursProps) {
  const said = fromYours(model);
  return said === '' ? null : <p class="next-yours">{said}</p>;
}

/** What all of it goes by, at the foot. */
export const Assumed = ({ model }: FromYoursProps) => (
  <p class="muted">{words.assumed[model.basis.value?.kind ?? 'training']}</p>
);
