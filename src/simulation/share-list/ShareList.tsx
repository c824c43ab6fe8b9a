import { format } from '../../quantity/print.ts';
import { percent } from '../../quantity/quantities.ts';

/** A name with how much speaks for it; `off` where next to nothing does. */
export interface Listed {
  readonly id: string;
  readonly name: string;
  readonly share: number;
  readonly off: boolean;
}
interface ShareListProps {
  readonly listed: readonly Listed[];
  /** What the list is, and what is said of a name that is off it. */
  readonly words: { readonly name: string; readonly off: string };
}

/** Room for a name that is certain, as a share of its row. */
const FULL = 100;

/** Every name, each with a bar of how much speaks for it; struck out where next to nothing does. */
export function ShareList({ listed, words }: ShareListProps) {
  return (
    <ul class="share-list" aria-label={words.name}>
      {listed.map(({ id, name, share, off }) => (
        <li key={id} class={off ? 'share-off' : ''}>
          {off ? (
            <>
              <s>{name}</s> <span class="visually-hidden">{words.off}</span>
            </>
          ) : (
            <>
              <span>{name}</span>{' '}
              <span class="visually-hidden">{format(100 * share, percent, 'us')}</span>
            </>
          )}
          <svg viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
            <rect width={FULL * share} height={4} />
          </svg>
        </li>
      ))}
    </ul>
  );
}
