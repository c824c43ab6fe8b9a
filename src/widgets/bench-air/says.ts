import { PRINTED_CEILINGS, type AirReading } from '../../car/air-bench.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { BenchAirModel } from './model.ts';
import { words } from './words.en.ts';

const { says, where, places, findings } = words;
/** Over this share of what the hole can pass it is loud. */
const LOUD = 0.75;

function ceiling(supply: number, system: UnitSystem): string {
  const print = printer(system);
  const kPa = (value: number) => print(value, pressure);
  const { low, high } = PRINTED_CEILINGS;
  const told = { supply: kPa(supply), low: kPa(low), high: kPa(high) };
  return supply > high + 1 ? says.ceilings(told) : says.ceiling(told);
}

function heard(place: string, read: AirReading, wet: boolean, system: UnitSystem): string {
  const told = {
    place,
    held: printer(system)(read.held, percent),
    where: where[read.most ?? 'rings'],
  };
  const loud = read.loud > LOUD;
  const name = loud
    ? read.thud
      ? ('loudThud' as const)
      : ('loudStill' as const)
    : read.thud
      ? ('softThud' as const)
      : ('softStill' as const);
  return says[wet ? (`${name}Wet` as const) : name](told);
}

/** What the gauge shows and the ear has, beside the sister; or what the bench says to a name. */
export function saysOf(model: BenchAirModel, system: UnitSystem, inTask = false): string {
  const { givens, shut, here, beside, unit, at } = model;
  if (shut.value) return ceiling(givens.supply.value, system);
  const print = printer(system);
  const named = givens.named.value;
  const { finding, at: place } = unit.value;
  if (named !== 'unsaid' && !inTask) {
    if (named !== finding) return says.wrong;
    return finding === 'nothing'
      ? says.rightNothing
      : says.right({ name: findings[finding], held: print(at(place).held, percent) });
  }
  const read = here.value;
  const on = places[givens.target.value];
  const wet = givens.wet.value;
  const sister = beside.value;
  if (sister === null) {
    const told = { place: on, held: print(read.held, percent), where: where.transferSeal };
    return read.most === null ? says.tight(told) : says[wet ? 'sealWet' : 'seal'](told);
  }
  const other = { held: print(sister.held, percent) };
  return `${heard(on, read, wet, system)} ${sister.thud ? says.sisterThud(other) : says.sisterStill(other)}`;
}
