import { HeatMap } from '../charts/HeatMap.tsx';
import { HEIGHTS_MM, WIDTHS_MM, type LeakEstimate } from '../diagnosis/index.ts';
import { dimension } from '../quantity/part-quantities.ts';
import { printer } from '../quantity/print.ts';
import { length } from '../quantity/quantities.ts';
import { words as said } from './leak-words.en.ts';

const ends = (of: readonly number[]) => ({ min: of[0] ?? 0, max: of.at(-1) ?? 1 });
const categories = [
  { id: 'in', label: said.fits, fill: 'filled' },
  { id: 'out', label: said.fitsNot, fill: 'plain' },
] as const;

/** Which heights and widths of the crack the pressures leave: the 90 % region, drawn. */
export function LeakMap({ leak }: { readonly leak: LeakEstimate }) {
  const inside = new Set(leak.region.map(([height, width]) => `${height} ${width}`));
  const heights = leak.region.map(([height]) => height);
  return (
    <HeatMap
      id="leak-map"
      name={said.map}
      takeaway={(system) => {
        const print = printer(system);
        return said.mapSays({
          low: print(Math.min(...heights), length),
          high: print(Math.max(...heights), length),
        });
      }}
      xAxis={{ label: said.width, quantity: dimension, ...ends(WIDTHS_MM), scale: 'log' }}
      yAxis={{ label: said.height, quantity: length, ...ends(HEIGHTS_MM) }}
      x={WIDTHS_MM}
      y={HEIGHTS_MM}
      cells={HEIGHTS_MM.map((height) =>
        WIDTHS_MM.map((width) => (inside.has(`${height} ${width}`) ? 'in' : 'out')),
      )}
      categories={categories}
    />
  );
}
