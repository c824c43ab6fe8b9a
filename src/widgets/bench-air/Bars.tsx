import { format } from '../../quantity/print.ts';
import { percent } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { BenchAirModel } from './model.ts';
import { words } from './words.en.ts';

/** Percent held, and the sister's under it: nothing to be read alone. */
export function Bars({ model }: { readonly model: BenchAirModel }) {
  const system = useUnits();
  const { givens, here, sister, beside, shut } = model;
  const { bars, places } = words;
  const rows = [
    { key: 'here', name: places[givens.target.value], held: here.value.held },
    {
      key: 'sister',
      name: sister.value === null ? bars.whole : bars.sister({ place: places[sister.value] }),
      held: beside.value?.held ?? 100,
    },
  ];
  return (
    <dl class="bench-air-bars">
      {rows.map(({ key, name, held }) => (
        <div key={key}>
          <dt>{name}</dt>
          <dd>
            <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
              <rect width={shut.value ? 0 : held} height={8} />
            </svg>
            <span>
              {shut.value ? bars.shut : bars.held({ share: format(held, percent, system) })}
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
