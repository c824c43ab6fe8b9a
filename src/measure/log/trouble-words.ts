import type { LogUnit, Role } from '../../log/roles.ts';
import type { ColumnTrouble } from '../../log/trouble.ts';
import { format } from '../../quantity/print.ts';
import { words } from './column-words.en.ts';
import { temperature } from './quantities.ts';

const plain = (value: number): string => String(Number(value.toPrecision(6)));

/** What is wrong with the column of a role, or null. */
export function troubleWords(troubles: readonly ColumnTrouble[], role: Role): string | null {
  const trouble = troubles.find((one) => one.role === role);
  if (trouble === undefined) return null;
  const { troubles: says } = words;
  switch (trouble.kind) {
    case 'missing':
      return role === 'time'
        ? says.missingTime
        : role === 'turbine'
          ? says.missingTurbine
          : says.missing;
    case 'taken':
      return says.taken(words.roles[trouble.by]);
    case 'runsBack':
      return says.runsBack({
        row: String(trouble.row),
        from: plain(trouble.from),
        to: plain(trouble.to),
      });
    case 'fahrenheit':
      return says.fahrenheit({
        most: format(trouble.most, temperature, 'si'),
        us: format(trouble.most, temperature, 'us'),
      });
    case 'hertz':
    case 'pressureUnit':
      return says[trouble.kind](plain(trouble.most));
    case 'milliseconds':
    case 'seconds':
      return says[trouble.kind](plain(trouble.step));
    case 'noNumbers':
    case 'standsStill':
    case 'noRanges':
      return says[trouble.kind];
  }
}

/** The unit that a column is asked about, where there is one it is likely in. */
const LIKELY = { fahrenheit: '°F', milliseconds: 'ms', seconds: 's' } as const;

export interface UnitDoubt {
  readonly role: Role;
  readonly unit: LogUnit;
}
/** The columns whose numbers cannot be in the unit that they are taken in. */
export const unitDoubts = (troubles: readonly ColumnTrouble[]): readonly UnitDoubt[] =>
  troubles.flatMap(({ role, kind }) =>
    Object.hasOwn(LIKELY, kind) ? [{ role, unit: LIKELY[kind as keyof typeof LIKELY] }] : [],
  );
