import { HeatMap } from '../../charts/HeatMap.tsx';
import type { MapCategory } from '../../charts/map-layout.ts';
import { length, temperature } from '../../quantity/quantities.ts';
import { MAP_CRACKS, MAP_TEMPS } from './hold-map.ts';
import type { PressureModel } from './model.ts';
import { CRACK, TEMP } from './ranges.ts';
import { asking } from './words.ts';

const X_AXIS = { label: 'Fluid temperature', quantity: temperature, min: TEMP.min, max: TEMP.max };
const Y_AXIS = { label: 'Crack', quantity: length, min: CRACK.min, max: CRACK.max };
const CATEGORIES: readonly MapCategory[] = [
  { id: 'holds', label: 'holds', fill: 'filled' },
  { id: 'slips', label: 'slips', fill: 'hatched' },
];

/** Every crack at every temperature, for the engine speed, circuit, fluid and command chosen. */
export function CrackMap({ model }: { readonly model: PressureModel }) {
  const { givens, map } = model;
  const { cells, contour } = map.value;
  const what = asking[givens.required.value];
  const nowhere = cells.every((row) => row.every((cell) => cell === 'holds'));
  return (
    <HeatMap
      id="clutch-pressure-map"
      name="Crack and temperature"
      takeaway={
        nowhere
          ? `${what}: no crack offered makes this circuit slip.`
          : `${what}: left of the line and below it the clutch holds. The wider the crack, the cooler it lets go.`
      }
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={MAP_TEMPS}
      y={MAP_CRACKS}
      cells={cells}
      categories={CATEGORIES}
      contour={contour}
      now={{ x: givens.temp.value, y: givens.crack.value, words: 'now' }}
      onPick={(temp, crack) => model.apply({ temp, crack })}
    />
  );
}
