import type { RehearsalModel } from './model.ts';
import { words } from './play-words.en.ts';

/** What the part on show is called. */
export function headOf({ view, rehearsal }: RehearsalModel): string {
  const { place, items } = rehearsal.value ?? { place: 0, items: [] };
  const of = String(items.length);
  if (view.value.at === 'result') return words.result.head;
  if (view.value.at === 'all') return words.overview.head({ of });
  const said = items[place]?.flagged ? words.askingFlagged : words.asking;
  return said({ place: String(place + 1), of });
}
