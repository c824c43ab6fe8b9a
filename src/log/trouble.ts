import type { Role } from './roles.ts';

/** Why a file or a column cannot be used, as data: the page says it in words, at the place. */
export type FileTrouble =
  | { readonly kind: 'empty' }
  /** What the first bytes say it is. */
  | { readonly kind: 'foreign'; readonly what: 'picture' | 'pdf' | 'archive' | 'json' | 'markup' }
  /** Bytes that are no text. */
  | { readonly kind: 'binary' }
  /** Text, but nowhere two columns with numbers under each other. */
  | { readonly kind: 'noTable' }
  /** More than can be held. */
  | { readonly kind: 'tooLarge'; readonly rows: number };

export type ColumnTrouble =
  | { readonly role: Role; readonly kind: 'missing' }
  | { readonly role: Role; readonly kind: 'noNumbers' }
  /** Two roles, one column. */
  | { readonly role: Role; readonly kind: 'taken'; readonly by: Role }
  /** Rows counted from 1, as they stand in the file. */
  | {
      readonly role: 'time';
      readonly kind: 'runsBack';
      readonly row: number;
      readonly from: number;
      readonly to: number;
    }
  | { readonly role: 'time'; readonly kind: 'standsStill' }
  /** A turbine that never passes 60: turns a second, not a minute? */
  | { readonly role: Role; readonly kind: 'hertz'; readonly most: number }
  | { readonly role: Role; readonly kind: 'fahrenheit'; readonly most: number }
  | { readonly role: Role; readonly kind: 'milliseconds'; readonly step: number }
  | { readonly role: Role; readonly kind: 'seconds'; readonly step: number }
  | { readonly role: Role; readonly kind: 'pressureUnit'; readonly most: number }
  | { readonly role: 'range'; readonly kind: 'noRanges' };

/** Those that leave nothing to read; the others are asked and the reading goes on. */
export const stops = ({ role, kind }: ColumnTrouble): boolean =>
  kind === 'runsBack' ||
  kind === 'standsStill' ||
  kind === 'taken' ||
  (kind === 'missing' && (role === 'time' || role === 'turbine')) ||
  (kind === 'noNumbers' && (role === 'time' || role === 'turbine'));
