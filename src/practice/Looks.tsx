import { useSignal, type Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { LOOKS, type Look } from '../cases/lists.ts';
import { LOOK_MINUTES } from '../cases/visit.ts';
import { words as planner } from '../planner/words.en.ts';
import { printer } from '../quantity/print.ts';
import { temperature } from '../quantity/quantities.ts';
import { useUnits } from '../ui/use-units.ts';
import type { CaseModel } from './model.ts';
import { words } from './words.en.ts';

/** What a look showed on this car. */
export const lookedLike = (model: CaseModel, what: Look): string =>
  model.bench.looks[what] ?? words.looks[what].good;

/** What is looked at without a gauge. */
export function Looks({ model }: { readonly model: CaseModel }) {
  const { look } = words;
  const open = useSignal<Look | ''>('');
  return (
    <details class="more case-part case-fold case-looks">
      <summary>
        <h3>{look.title}</h3>
      </summary>
      <p class="muted">{look.note}</p>
      <ul class="case-tests">
        {LOOKS.map((what) => (
          <li key={what}>
            <One model={model} what={what} open={open} />
          </li>
        ))}
      </ul>
    </details>
  );
}

interface OneProps {
  readonly model: CaseModel;
  readonly what: Look;
  readonly open: Signal<Look | ''>;
}

/** A row as a test has it; looked at, it says what there was. */
function One({ model, what, open }: OneProps) {
  const { look, looks } = words;
  const { name } = looks[what];
  const done = model.has({ kind: 'look', what });
  const isOpen = open.value === what;
  const found = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    // The button that was pressed is gone.
    if (done && open.peek() === what) found.current?.focus();
  }, [done]);
  if (done)
    return (
      <p class="case-found" tabIndex={-1} ref={found}>
        <strong>{name}</strong> {lookedLike(model, what)}
      </p>
    );
  return (
    <>
      <button
        type="button"
        class="case-test"
        aria-expanded={isOpen}
        onClick={() => (open.value = isOpen ? '' : what)}
      >
        <span>{name}</span>
        <span>{planner.next.takes({ minutes: String(LOOK_MINUTES[what]) })}</span>
      </button>
      {isOpen && (
        <div class="case-open">
          <Caution what={what} />
          <button
            type="button"
            class="act"
            aria-label={`${look.doIt}: ${name}`}
            onClick={() => model.take({ kind: 'look', what })}
          >
            {look.doIt}
          </button>
        </div>
      )}
    </>
  );
}

/** From here on a drive only cooks the fluid (common practice, no source) [°C]. */
const TOO_HOT = 120;

function Caution({ what }: { readonly what: Look }) {
  const tooHot = printer(useUnits())(TOO_HOT, temperature);
  const caution = words.lookCautions({ tooHot })[what];
  return caution === undefined ? null : <p class="before-test">{caution}</p>;
}
