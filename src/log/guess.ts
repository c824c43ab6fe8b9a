import { isBlank } from './cells.ts';
import {
  UNITS,
  type ColumnChoice,
  type LogRange,
  type LogUnit,
  type Mapping,
  type Role,
} from './roles.ts';

/**
 * What columns are usually called: plain words, and the short forms that the trade writes (TSS and ISS for turbine or
 * input speed, OSS for output speed, TFT for fluid temperature). Common practice, no source.
 */
const NAMES: readonly (readonly [Role, RegExp])[] = [
  ['time', /^(?:elapsed |log |sample )?time\b|^t$|timestamp|^seconds$|^ms$/iu],
  ['turbine', /turbine|\btss\b|\biss\b|input (?:shaft |sensor )?(?:speed|rpm)|\binput\b/iu],
  ['output', /output|\boss\b|tail ?shaft/iu],
  [
    'temperature',
    /\btft|(?:fluid|oil|trans\w*|gearbox|sump|atf).*temp|temp.*(?:fluid|oil|trans|sump)/iu,
  ],
  ['range', /\brange\b|\bprndl?\b|selector|lever|shift ?position/iu],
  ['gear', /\bgear\b/iu],
  ['brake', /brake/iu],
  ['throttle', /throttle|pedal|\btps?\b|\bapp\b/iu],
  ['roadSpeed', /road ?speed|vehicle ?speed|\bvss\b|\bspeed\b.*\b(?:km|mph)/iu],
  ['clutchPressure', /clutch.*(?:press|kpa|psi|bar)|press.*clutch/iu],
  ['linePressure', /line.*(?:press|kpa|psi|bar)|\bline\b/iu],
  ['engine', /engine|motor|crank|\brpm\b|\bn?eng\b/iu],
  ['temperature', /temp/iu],
];

/** Words between letters that a header runs together: "TurbineSpeed_rpm" reads as "Turbine Speed rpm". */
const spaced = (name: string): string =>
  name
    // A unit behind the name is read apart.
    .replace(/[[(][^\])]*[\])]\s*$/u, '')
    .replace(/([a-z])([A-Z])/gu, '$1 $2')
    .replace(/[_\-.[\](){}/:]+/gu, ' ')
    .trim();

const isUnitOf = (role: Role, unit: string): unit is LogUnit =>
  (UNITS[role] as readonly string[]).includes(unit);

/** The columns as their names and units suggest. Each column once, each role once. */
export function guessColumns(
  names: readonly string[],
  units: readonly string[],
): Partial<Record<Role, ColumnChoice>> {
  const taken = new Set<number>();
  const columns: Partial<Record<Role, ColumnChoice>> = {};
  for (const [role, pattern] of NAMES) {
    if (columns[role] !== undefined) continue;
    const column = names.findIndex(
      (name, i) =>
        !taken.has(i) &&
        pattern.test(spaced(name)) &&
        // A unit that the role cannot have says that the name misleads, as "Engine oil pressure, kPa".
        (units[i] === '' ||
          units[i] === undefined ||
          units[i] === 'hz' ||
          (UNITS[role].length === 0 && units[i] === 'other') ||
          isUnitOf(role, units[i])),
    );
    if (column < 0) continue;
    taken.add(column);
    const said = units[column] ?? '';
    const [usual] = UNITS[role];
    const unit = isUnitOf(role, said) ? said : usual;
    columns[role] = unit === undefined ? { column } : { column, unit };
  }
  return columns;
}

/**
 * What the words of a range column stand for. Numbers alone stay open: each tool has its own, and a wrong guess would
 * make engagements out of nothing.
 */
export function guessRanges(sayings: readonly string[]): Record<string, LogRange> {
  const ranges: Record<string, LogRange> = {};
  for (const saying of sayings) {
    if (isBlank(saying)) continue;
    const word = saying.trim().toUpperCase();
    if (/^(?:P|PARK)$/u.test(word)) ranges[saying] = 'park';
    else if (/^(?:N|NEUTRAL)$/u.test(word)) ranges[saying] = 'neutral';
    else if (/^(?:R|REV|REVERSE)$/u.test(word)) ranges[saying] = 'reverse';
    else if (/^(?:D\d*|DRIVE|L|LOW|S|SPORT|M\d*|MANUAL|OD)$/u.test(word)) ranges[saying] = 'drive';
  }
  return ranges;
}

/** The header as a key to remember a mapping by: the same tool writes the same one again. */
export const headerKey = (names: readonly string[], units: readonly string[]): string =>
  names.map((name, i) => `${name.trim()}|${units[i] ?? ''}`).join('\u001f');

/** A remembered mapping, if it still fits the file. */
export const fits = ({ columns }: Mapping, width: number): boolean =>
  Object.values(columns).every(({ column }) => column >= 0 && column < width);
