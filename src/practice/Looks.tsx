import { LOOKS, type Look } from '../cases/lists.ts';
import { LOOK_MINUTES } from '../cases/visit.ts';
import type { CaseModel } from './model.ts';
import { words } from './words.en.ts';

/** What a look showed on this car. */
export const lookedLike = (model: CaseModel, what: Look): string =>
  model.bench.looks[what] ?? words.looks[what].good;

/** What is looked at without a gauge. */
export function Looks({ model }: { readonly model: CaseModel }) {
  const { look, looks, lookCautions } = words;
  return (
    <details class="more case-part case-fold case-looks">
      <summary>
        <h3>{look.title}</h3>
      </summary>
      <p class="muted">{look.note}</p>
      <ul class="case-list">
        {LOOKS.map((what) => {
          const done = model.has({ kind: 'look', what });
          const caution = lookCautions[what];
          return (
            <li key={what}>
              <p>
                <strong>{looks[what].name}</strong>{' '}
                {!done && <span>{look.takes({ minutes: String(LOOK_MINUTES[what]) })}</span>}
              </p>
              {done ? (
                <p role="status">{lookedLike(model, what)}</p>
              ) : (
                <>
                  {caution !== undefined && <p class="before-test">{caution}</p>}
                  <button
                    type="button"
                    class="quiet"
                    aria-label={`${look.doIt}: ${looks[what].name}`}
                    onClick={() => model.take({ kind: 'look', what })}
                  >
                    {look.doIt}
                  </button>
                </>
              )}
            </li>
          );
        })}
      </ul>
    </details>
  );
}
