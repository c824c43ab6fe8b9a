import { seededRandom } from '../quiz/seeded-order.ts';
import { idOf, type Family, type Setting } from './family.ts';

/** Draws before a family is given up. */
const TRIES = 3000;
/** Settings refused one after the other before the turn of the first part is given up. */
const PATIENCE = 60;

/**
 * Settings of a family, drawn from its ranges by a seed: always the same ones. Where the first part is named in words (a
 * transmission, a fault), its cases take turns.
 * @param keep says whether a setting will do; those that will not are passed over
 * @returns fewer than asked for if the ranges do not have as many
 */
export function drawSettings(
  family: Family,
  seed: number,
  count: number,
  keep: (setting: Setting) => boolean,
): readonly Setting[] {
  const random = seededRandom(seed);
  const parts = Object.entries(family.ranges);
  const kept = new Map<string, Setting>();
  const refused = new Set<string>();
  const start = Math.floor(random() * 12);
  let refusals = 0;
  for (let tries = 0; kept.size < count && tries < TRIES; tries += 1) {
    const setting = Object.fromEntries(
      parts.map(([part, range], i) => {
        const inTurn = i === 0 && typeof range[0] === 'string' && refusals < PATIENCE;
        const at = inTurn
          ? (start + kept.size) % range.length
          : Math.floor(random() * range.length);
        return [part, range[at] ?? 0];
      }),
    );
    const id = idOf(family, setting);
    if (!kept.has(id) && !refused.has(id) && keep(setting)) {
      kept.set(id, setting);
      refusals = 0;
    } else {
      refused.add(id);
      refusals += 1;
    }
  }
  return [...kept.values()];
}
