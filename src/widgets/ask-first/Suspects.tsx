import { NAMES } from '../../diagnosis/hypotheses.ts';
import { OFF, type AskFirstModel } from './model.ts';
import { nameOf } from './print.ts';
import { words } from './words.en.ts';

/** Room for a name that is certain, as a share of its row. */
const FULL = 100;

/** Every name, each with a bar of how much speaks for it; struck out where next to nothing does. */
export function Suspects({ model }: { readonly model: AskFirstModel }) {
  const shares = model.list.value;
  return (
    <ul class="ask-list" aria-label={words.list.name}>
      {NAMES.map((name, i) => {
        const share = shares[i] ?? 0;
        const off = share < OFF;
        return (
          <li key={name} class={off ? 'ask-off' : ''}>
            {off ? (
              <>
                <s>{nameOf(name)}</s> <span class="visually-hidden">{words.list.off}</span>
              </>
            ) : (
              <span>{nameOf(name)}</span>
            )}
            <svg viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
              <rect width={FULL * share} height={4} />
            </svg>
          </li>
        );
      })}
    </ul>
  );
}
