/** What is said of a field: its name, its assumed value, and what is wrong with it, in the reader's units. */
import { CIRCUITS, GEARS, type Circuit, type Gear } from '../../engine/index.ts';
import { fieldAt, type SheetField } from '../../own-sheet/fields.ts';
import { FLUID_PATH, SEAL_PATH, typedAt, type Trouble } from '../../own-sheet/read-sheet.ts';
import { parseAmount } from '../../quantity/parse-amount.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { force } from '../../quantity/part-quantities.ts';
import { pressure } from '../../quantity/quantities.ts';
import { rangeTyped } from '../../quantity/typed-range.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { OwnSheet, TypedField } from '../../storage/sheets/own-sheet.ts';
import { words } from './field-words.en.ts';

const { wrong, chart } = words;

/** The circuit of a path, where it is one clutch's. */
const clutchPath = (path: string): readonly [Circuit, keyof typeof words.clutch] | null => {
  const [, circuit, key] = /^clutches\.(\w+)\.(\w+)$/.exec(path) ?? [];
  return circuit === undefined || key === undefined
    ? null
    : [circuit as Circuit, key as keyof typeof words.clutch];
};

export function saidOf(path: string): { readonly label: string; readonly where: string } {
  if (path === FLUID_PATH) return words.fluid;
  if (path === SEAL_PATH) return { label: chart.seal, where: chart.sealHow };
  if (path.startsWith('applyChart.'))
    return { label: chart.gears[path.slice('applyChart.'.length) as Gear], where: '' };
  const one = clutchPath(path);
  if (one === null) return words.fields[path] ?? { label: path, where: '' };
  const [circuit, key] = one;
  const { label, where } = words.clutch[key];
  return { label: words.ofClutch({ label, circuit: chart.circuits[circuit] }), where };
}

/** What stands in a field in the reader's units: as typed, or turned into them where it was typed in the others. */
export function shownIn(
  typed: TypedField | undefined,
  { quantity }: SheetField,
  system: UnitSystem,
): string {
  if (typed === undefined) return '';
  if (typed.units === system || quantity.si === quantity.us) return typed.text;
  const read = parseAmount(typed.text, quantity, typed.units);
  return read.ok ? formatNumber(read.value, quantity, system) : typed.text;
}

/** The number that counts at a path: typed, or assumed. */
function valueAt(sheet: OwnSheet, path: string): number {
  const field = fieldAt(path);
  if (field === undefined) return Number.NaN;
  const typed = typedAt(sheet, path);
  const read = typed && parseAmount(typed.text, field.quantity, typed.units, field.range);
  return read?.ok === true ? read.value : field.assumed;
}
const shownAt = (sheet: OwnSheet, path: string, system: UnitSystem): string => {
  const field = fieldAt(path);
  return field === undefined ? '' : format(valueAt(sheet, path), field.quantity, system);
};

const GEAR_OF: Readonly<Record<string, Circuit>> = { R: 'reverse', '1': 'forward', '3': 'high' };

function checked(sheet: OwnSheet, path: string, system: UnitSystem): string {
  const at = (one: string): string => shownAt(sheet, one, system);
  const leastPath =
    valueAt(sheet, 'commands.clutchLeast_kPa') <= valueAt(sheet, 'commands.idleClutch_kPa')
      ? 'commands.clutchLeast_kPa'
      : 'commands.idleClutch_kPa';
  switch (path) {
    case 'commands.idleClutch_kPa':
      return wrong.aboveLine({ clutch: at(path), line: at('commands.idleLine_kPa') });
    case 'commands.loadClutch_kPa':
      return wrong.aboveLine({ clutch: at(path), line: at('commands.loadLine_kPa') });
    case 'commands.clutchLeast_kPa':
      return wrong.leastAboveMost({ least: at(path), most: at('commands.clutchMost_kPa') });
    case 'feed.band_kPa':
      return wrong.band({ band: at(path), least: at(leastPath) });
    case 'fluid.kv100_cSt':
      return wrong.thinsNot({ at40: at('fluid.kv40_cSt'), at100: at(path) });
  }
  const gear = GEARS.find((one) => path === `applyChart.${one}`);
  const circuit = gear && GEAR_OF[gear];
  if (gear !== undefined && circuit !== undefined)
    return wrong.mustHave({ gear: chart.gears[gear], circuit: chart.circuits[circuit] });
  const sprung = CIRCUITS.find((one) => path === `clutches.${one}.spring_N`);
  if (sprung !== undefined) {
    const spring = valueAt(sheet, path);
    const area = valueAt(sheet, `clutches.${sprung}.area_cm2`);
    return wrong.spring({
      force: format(spring, force, system),
      takes: format((10 * spring) / area, pressure, system),
      least: at(leastPath),
    });
  }
  return wrong.other;
}

/** Whether what stands at a field cannot be read, which makes it nobody's number; what only clashes with another is one. */
export const isRefused = (trouble: Trouble | undefined): boolean =>
  trouble !== undefined && trouble.kind !== 'check';

/** What may stand in place of a range that was typed, in the units that it was typed in; "" where that is none. */
export function middleOf(trouble: Trouble | undefined): string {
  if (trouble?.kind !== 'typed') return '';
  const { field, typed } = trouble;
  return rangeTyped(typed.text, field.quantity, typed.units, field.range)?.middle ?? '';
}

/** One sentence for a trouble, at its field. */
export function sentenceOf(
  trouble: Trouble,
  path: string,
  sheet: OwnSheet,
  system: UnitSystem,
): string {
  switch (trouble.kind) {
    case 'typed': {
      const { field, typed } = trouble;
      const asked = [typed.text, field.quantity, typed.units, field.range] as const;
      const read = parseAmount(...asked);
      return read.ok ? '' : (rangeTyped(...asked)?.sentence ?? read.sentence);
    }
    case 'circuits':
      return path === SEAL_PATH ? wrong.noSealed : wrong.noCircuit;
    case 'fluid':
      return wrong.noFluid;
    case 'check':
      return checked(sheet, path, system);
  }
}
