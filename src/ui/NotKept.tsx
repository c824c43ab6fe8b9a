import { faultAt } from './keep-at.ts';
import { words } from './later/words.en.ts';

/** One sentence where an answer was given that could not be kept. There from the start, so that it is read out. */
export function NotKept({ place }: { readonly place: string }) {
  const fault = faultAt(place);
  return (
    <p class="muted" role="status">
      {fault && words.notKept[fault]}
    </p>
  );
}
