import { useUnits } from '../../ui/use-units.ts';
import { COOL_C, type FluidModel, type FluidSide } from './model.ts';
import { sayCst, sayIndex, sayMpas, sayTemp, sayTimes } from './words.ts';
import { format } from '../../quantity/print.ts';
import { density } from '../../quantity/part-quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';

/** Both fluids at the temperature set, number by number. */
export function SideBySide({ model }: { readonly model: FluidModel }) {
  const system = useUnits();
  const { a, b, givens } = model;
  return (
    <table class="sides">
      <caption>Side by side at {sayTemp(givens.temp.value, system)}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">A: {a.name}</th>
          <th scope="col">B: {b.name}</th>
        </tr>
      </thead>
      <tbody>
        {rows(system).map(({ label, cell }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td class="number">{cell(a)}</td>
            <td class="number">{cell(b)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface Row {
  readonly label: string;
  readonly cell: (side: FluidSide) => string;
}

const rows = (system: UnitSystem): readonly Row[] => [
  {
    label: 'Kinematic viscosity',
    cell: ({ now }) => (now.value ? sayCst(now.value.kinematic) : 'none'),
  },
  {
    label: 'Dynamic viscosity',
    cell: ({ now }) => (now.value ? sayMpas(now.value.dynamic) : 'none'),
  },
  {
    label: 'Density',
    cell: ({ now }) => (now.value ? format(now.value.density, density, system) : 'none'),
  },
  {
    label: `Thinner than at ${sayTemp(COOL_C, system)}, in cSt`,
    cell: ({ times }) =>
      times.value === null
        ? 'none'
        : times.value >= 1
          ? `${sayTimes(times.value)} times`
          : `${sayTimes(1 / times.value)} times thicker`,
  },
  { label: 'Viscosity index', cell: ({ index }) => sayIndex(index.value) },
];
