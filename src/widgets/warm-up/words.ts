import type { DriveKind } from '../../engine/index.ts';
import { plural } from '../../quantity/lists.ts';
import { format } from '../../quantity/print.ts';
import { temperature, temperatureRise } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { asking } from '../clutch-pressure/words.ts';
import { TIMES, type WarmUpModel } from './model.ts';

export const kindWords: Readonly<Record<DriveKind, string>> = {
  idling: 'idling',
  gentle: 'gentle',
  pulling: 'pulling',
};
const DRIVING: Readonly<Record<DriveKind, string>> = {
  idling: 'idling',
  gentle: 'gentle driving',
  pulling: 'stop-and-go pulling',
};

/** "17 minutes", as somebody says it. */
export const spoken = (minute: number): string =>
  minute < 0.5 ? 'less than a minute' : plural(minute, { one: '# minute', other: '# minutes' });

/** The drive up to a minute, in words; one kind only is said more shortly. */
function drivenUpTo({ stretches }: WarmUpModel, minute: number): string {
  const parts = stretches.value.filter(({ from }) => from < minute);
  const kinds = [...new Set(parts.map(({ kind }) => kind))];
  const [only] = kinds;
  if (kinds.length === 1 && only) return `After ${spoken(minute)} of ${DRIVING[only]}`;
  return `After ${spoken(minute)} of this drive`;
}

/** The hottest that the fluid law is offered for [°C]. */
const MOST = 140;

/** A word of warning where a plan would cook the fluid. */
function tooHot({ temps }: WarmUpModel, system: UnitSystem): string {
  const first = temps.value.findIndex((temp) => temp !== null && temp > MOST);
  return first < 0
    ? ''
    : ` After ${spoken(TIMES[first] ?? 0)} the fluid is over ${format(MOST, temperature, system)}: stop long before.`;
}

/** When it shows, in one sentence. */
export function verdict(model: WarmUpModel, system: UnitSystem): string {
  const { shows, letsGo, end, givens } = model;
  const found = shows.value;
  const lets = letsGo.value;
  const at = lets.kind === 'at' ? format(lets.tempC, temperature, system) : '';
  switch (found.when) {
    case 'never':
      return 'This crack holds at every temperature offered. No drive will show it.';
    case 'at-once':
      return lets.kind === 'at'
        ? `The fluid starts warmer than ${at}: it slips from the first take-off.`
        : 'It does not hold at any temperature offered: it slips from the start.';
    case 'at':
      return `${drivenUpTo(model, found.minute)} it will let go, at ${at}.`;
    case 'not-on-this-drive': {
      const last = format(end.value.tempC, temperature, system);
      const short = format(found.shortC, temperatureRise, system);
      return `This drive does not show it. It ends at ${last} after ${spoken(end.value.minute)}; ${asking[givens.required.value].toLowerCase()} lets go at ${at}, ${short} more than the fluid ever gets.`;
    }
  }
}

/** The sentence under the picture. */
export function says(model: WarmUpModel, system: UnitSystem): string {
  return `${verdict(model, system)}${tooHot(model, system)}`;
}
