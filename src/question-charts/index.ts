/** The charts that questions name, by their ids. An author names one; nobody writes points. */
import type { ChartPicture } from '../quiz/chart-picture.ts';
import { drawChart } from './draw.ts';
import { fluids } from './fluids.ts';
import { pressures } from './pressures.ts';
import type { Recipe } from './recipe.ts';
import { speeds } from './speeds.ts';

const recipes = new Map<string, () => Recipe>(
  Object.entries({ ...pressures, ...speeds, ...fluids }),
);
export const chartIds: readonly string[] = [...recipes.keys()];

const drawn = new Map<string, ChartPicture>();

/** The chart of that name, or nothing. Each is solved and drawn once, when it is asked for. */
export function chartOf(id: string): ChartPicture | undefined {
  const recipe = recipes.get(id);
  if (recipe === undefined) return undefined;
  const chart = drawn.get(id) ?? drawChart(recipe());
  drawn.set(id, chart);
  return chart;
}
