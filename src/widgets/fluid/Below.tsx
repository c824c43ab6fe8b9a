import { density } from '../../quantity/part-quantities.ts';
import { coolAndHot } from '../../simulation/choices/temperatures.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { format } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { FluidModel, FluidSide } from './model.ts';
import { printCst, printIndex, printMpas, printTimes } from './print.ts';
import { Thickness } from './Thickness.tsx';
import { words } from './words.en.ts';

export function Below(props: PictureProps<FluidModel>) {
  return (
    <>
      <div>
        <SideBySide model={props.model} />
      </div>
      <Thickness kind="dynamic" {...props} />
    </>
  );
}

/** Both fluids at the temperature set, number by number. */
export function SideBySide({ model }: { readonly model: FluidModel }) {
  const system = useUnits();
  const { a, b, givens } = model;
  const temp = format(givens.temp.value, temperature, system);
  return (
    <table class="sides">
      <caption>{words.table.caption({ temp })}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">{words.chart.line({ side: 'A', name: a.name.value })}</th>
          <th scope="col">{words.chart.line({ side: 'B', name: b.name.value })}</th>
        </tr>
      </thead>
      <tbody>
        {rows(system).map(([label, cell]) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td class="number">{cell(a) ?? words.table.none}</td>
            <td class="number">{cell(b) ?? words.table.none}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

type Row = readonly [label: string, cell: (side: FluidSide) => string | null];

function rows(system: UnitSystem): readonly Row[] {
  const { table, chart } = words;
  return [
    [chart.kinematic, ({ now }) => now.value && printCst(now.value.kinematic)],
    [chart.dynamic, ({ now }) => now.value && printMpas(now.value.dynamic)],
    [table.density, ({ now }) => now.value && format(now.value.density, density, system)],
    [
      table.thinnerThan(coolAndHot(system)),
      ({ times: { value } }) =>
        value === null
          ? null
          : table[value >= 1 ? 'thinner' : 'thicker']({ times: printTimes(value) }),
    ],
    [table.index, ({ index }) => printIndex(index.value)],
  ];
}
