import { askedForNumbers } from './numbers/asked-for.ts';
import { given, type EngineNumbers } from './numbers/entry.ts';
import { hotFluidNumbers } from './numbers/hot-fluid-thin-fluid.ts';
import { whatPressureNumbers } from './numbers/what-pressure-does.ts';
import { thinGapNumbers } from './numbers/thin-gap-open-hole.ts';
import { pumpNumbers } from './numbers/pump-and-regulator.ts';
import { pathNumbers } from './numbers/regulator-to-clutch.ts';
import { turbineStopsNumbers } from './numbers/turbine-must-stop.ts';
import { rangeSelectionNumbers } from './numbers/two-range-selections.ts';
import { whatSlipIsNumbers } from './numbers/what-slip-is.ts';

export type { EngineNumber, EngineNumbers } from './numbers/entry.ts';

/** Temperatures that the prose chooses; they still have to read in both unit systems. */
const givens: EngineNumbers = Object.fromEntries(
  [-30, -20, -10, 0, 10, 15, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 140].map((tempC) => [
    `at-${tempC < 0 ? `minus-${-tempC}` : tempC}`,
    given(tempC),
  ]),
);

/**
 * Every number that the engine gives and prose quotes, by the id in <Num id="…" />. Values are
 * computed at build by calling the engine; nobody types a result. One file a lesson.
 */
export const numbers: EngineNumbers = {
  'offered-temperature-low': given(-30),
  'offered-temperature-high': given(140),
  ...givens,
  ...whatPressureNumbers,
  ...hotFluidNumbers,
  ...thinGapNumbers,
  ...pumpNumbers,
  ...pathNumbers,
  ...rangeSelectionNumbers,
  ...turbineStopsNumbers,
  ...whatSlipIsNumbers,
  ...askedForNumbers,
};
