/** A choice in the page's address, so that a link makes the same sheet. */
import type { UnitSystem } from '../quantity/unit-system.ts';
import { SHEETS, type Sheet } from '../quiz/on-paper/sheets.ts';
import { lessonsOf, type Area, type Choice, type Typed } from './choice.ts';

export const SHOWN = [...SHEETS, 'key'] as const;
export type Shown = Sheet | 'key';

const ALL = 'all';

export const searchOf = (
  { lessons, all, count, units, seed }: Choice,
  version: string,
  shown: Shown,
): string =>
  `?${new URLSearchParams({
    lessons: all ? ALL : lessons.map(({ id }) => id).join('.'),
    count: String(count),
    units,
    seed,
    version,
    show: shown,
  }).toString()}`;

export interface AddressRead {
  readonly typed: Typed;
  readonly shown: Shown;
  /** Lessons that the link names and the site has not. */
  readonly gone: readonly string[];
}

/** @returns undefined if the address names no sheet; what it says otherwise, good or bad */
export function readAddress(
  search: string,
  areas: readonly Area[],
  units: UnitSystem,
): AddressRead | undefined {
  const params = new URLSearchParams(search);
  const seed = params.get('seed');
  if (seed === null) return undefined;
  const known = lessonsOf(areas).map(({ id }) => id);
  const asked = params.get('lessons') ?? '';
  const ids = asked === ALL ? known : asked.split('.').filter((id) => id !== '');
  const system = params.get('units');
  return {
    typed: {
      lessons: new Set(ids.filter((id) => known.includes(id))),
      count: params.get('count') ?? '',
      units: system === 'us' || system === 'si' ? system : units,
      seed,
      version: params.get('version') ?? '',
    },
    shown: SHOWN.find((one) => one === params.get('show')) ?? 'a',
    gone: ids.filter((id) => !known.includes(id)),
  };
}
