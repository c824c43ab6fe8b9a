/** Which case a link names: one that is written, by its id, or one that is made, by number, difficulty and transmission. */
import { LEVELS, MOST_SEED, TRANSMISSIONS, type MadeKey } from '../cases/made-key.ts';

export type Asked =
  | { readonly kind: 'written'; readonly id: string }
  | { readonly kind: 'made'; readonly key: MadeKey }
  | { readonly kind: 'bad-made' }
  | { readonly kind: 'none' };

/** Reads a search string. Never throws. */
export function readAddress(search: string): Asked {
  const params = new URLSearchParams(search);
  const id = params.get('case');
  if (id !== null) return { kind: 'written', id };
  const number = params.get('number');
  if (number === null) return { kind: 'none' };
  const seed = /^\d{1,5}$/.test(number) ? Number(number) : 0;
  const level = LEVELS.find((one) => String(one) === (params.get('level') ?? '1'));
  const on = TRANSMISSIONS.find((one) => one === (params.get('on') ?? 'training'));
  if (seed < 1 || seed > MOST_SEED || level === undefined || on === undefined)
    return { kind: 'bad-made' };
  return { kind: 'made', key: { seed, level, on } };
}

/** The search string of a case. */
export const searchOf = (asked: Extract<Asked, { kind: 'written' | 'made' }>): string =>
  asked.kind === 'written'
    ? `?case=${encodeURIComponent(asked.id)}`
    : `?number=${asked.key.seed}&level=${asked.key.level}&on=${asked.key.on}`;

/** Under what name the device remembers a made case. */
export const keyOf = ({ seed, level, on }: MadeKey): string => `made-${on}-${level}-${seed}`;
