/** This simulation's own words for its numbers. */
import { MARK_MM } from '../../car/pan.ts';
import { training } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { percent, pressure, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { LevelModel } from './model.ts';
import { words } from './words.en.ts';

/** Nearer to the middle than this a stick stands at it [mm]. */
export const AT_MIDDLE_MM = 1;

export function stickWords({ level, givens }: LevelModel, system: UnitSystem): string {
  const print = printer(system);
  const { stickMm: mm, stickDry } = level.value;
  const from = Math.abs(mm);
  const told = { temp: print(givens.temp.value, temperature), mm: print(from, dimension) };
  if (stickDry) return words.stick.dry(told);
  if (from <= AT_MIDDLE_MM) return words.stick.middle(told);
  const outside = from > MARK_MM;
  if (mm < 0) return words.stick[outside ? 'under' : 'low'](told);
  return words.stick[outside ? 'over' : 'high'](told);
}

export const airWords = (air: number): string =>
  air > 0 ? words.pickUp.air({ air: printer('si')(100 * air, percent) }) : words.pickUp.covered;

export function lineWords({ pickUp }: LevelModel, system: UnitSystem): string {
  const print = printer(system);
  const { lineKpa, lineAtCommand } = pickUp.value;
  const asked = print(training.testPoints.idle.line / 1e3, pressure);
  const line = print(lineKpa, pressure);
  return lineAtCommand ? words.line.held({ line }) : words.line.down({ line, asked });
}
