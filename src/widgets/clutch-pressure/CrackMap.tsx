import { HeatMap } from '../../charts/HeatMap.tsx';
import type { MapCategory } from '../../charts/map-layout.ts';
import { length, temperature } from '../../quantity/quantities.ts';
import { CRACK } from '../../simulation/choices/number.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { MAP_CRACKS, MAP_TEMPS } from './hold-map.ts';
import type { PressureModel } from './model.ts';
import { demandOf } from './sim.ts';
import { words } from './below-words.en.ts';
import { words as common } from './words.en.ts';

const { map: said } = words;
const { chart } = common;
const X_AXIS = { label: chart.x, quantity: temperature, min: TEMP.min, max: TEMP.max };
const Y_AXIS = { label: said.y, quantity: length, min: CRACK.min, max: CRACK.max };
const CATEGORIES: readonly MapCategory[] = [
  { id: 'holds', label: said.holds, fill: 'filled' },
  { id: 'slips', label: said.slips, fill: 'hatched' },
];

/** Every crack at every temperature, for the engine speed, circuit, fluid and command chosen. */
export function CrackMap({ model }: { readonly model: PressureModel }) {
  const { givens, map } = model;
  const { cells, contour } = map.value;
  const nowhere = cells.every((row) => row.every((cell) => cell === 'holds'));
  return (
    <HeatMap
      id="clutch-pressure-map"
      name={said.name}
      takeaway={(nowhere ? said.nowhere : said.edge)({ demand: demandOf(model) })}
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={MAP_TEMPS}
      y={MAP_CRACKS}
      cells={cells}
      categories={CATEGORIES}
      contour={contour}
      now={{ x: givens.temp.value, y: givens.crack.value, words: chart.now }}
      onPick={(temp, crack) => model.apply({ temp, crack })}
    />
  );
}
