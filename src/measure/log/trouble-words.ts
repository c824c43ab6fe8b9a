import type { Role } from '../../log/roles.ts';
import type { ColumnTrouble } from '../../log/trouble.ts';
import { words } from './column-words.en.ts';

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
    case 'hertz':
    case 'fahrenheit':
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
