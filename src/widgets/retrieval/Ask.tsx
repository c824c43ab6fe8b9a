import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Asked } from '../../quiz/asked.ts';
import { certainties } from '../../quiz/certainty.ts';
import { quantityOf } from '../../quantity/by-name.ts';
import { units } from '../../ui/units-signal.ts';
import { FormField, isForm, preloadForms } from './FormField.tsx';
import { price } from './how-sure.ts';
import type { RetrievalModel } from './model.ts';
import { words } from './player/words.en.ts';
import { Stem } from './Stem.tsx';
import { useDraft } from './use-draft.ts';
import { WordsText } from './WordsText.tsx';

interface AskProps {
  readonly model: RetrievalModel;
  readonly asked: Asked;
  readonly id: string;
  /** What the second button says: it leaves the questions, and they wait. */
  readonly leave?: string;
  /** What stands at the foot in place of Check and leave. */
  readonly row?: ComponentChildren;
}

/** One question: answer, then certainty, then check. A form, so that Enter works and the browser does the keyboard. */
export function Ask({ model, asked, id, leave = words.uncover, row }: AskProps) {
  const complaint = model.complaint.value;
  // Who puts a row of its own there keeps every answer itself.
  useDraft(model, asked, row === undefined);
  useEffect(() => preloadForms(model.session.peek()?.questions ?? []), [model]);
  const at = (place: 'answer' | 'certainty'): string | undefined =>
    complaint?.place === place ? complaint.sentence : undefined;

  function submit(event: Event): void {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    if (model.check(units.peek())) return;
    const place = model.complaint.peek()?.place;
    form
      .querySelector<HTMLElement>(
        `[data-place="${place ?? 'answer'}"] :is(input, button:not([aria-disabled='true']))`,
      )
      ?.focus();
  }

  return (
    <form class="retrieval-form" data-busy onSubmit={submit} noValidate>
      <Stem asked={asked} />
      <div data-place="answer">
        {asked.kind === 'number' ? (
          <NumberField model={model} asked={asked} id={id} fault={at('answer')} />
        ) : isForm(asked) ? (
          <FormField model={model} asked={asked} id={id} />
        ) : (
          <fieldset class="choice retrieval-options" aria-describedby={`${id}-fault-answer`}>
            <legend>{asked.kind === 'single' ? words.best : words.everyOne}</legend>
            {asked.options.map((option) => (
              <label key={`${asked.id}-${option.id}`} class="choice-option">
                <input
                  type={asked.kind === 'single' ? 'radio' : 'checkbox'}
                  name={`${id}-option`}
                  checked={model.ticked.value.includes(option.id)}
                  onChange={() => model.tick(option.id)}
                />
                <span>
                  <WordsText words={option.words} />
                </span>
              </label>
            ))}
          </fieldset>
        )}
        <p class="field-error" id={`${id}-fault-answer`} role="alert">
          {at('answer')}
        </p>
      </div>

      <div data-place="certainty">
        <fieldset class="choice" aria-describedby={`${id}-fault-certainty`}>
          <legend>{words.sure}</legend>
          <div class="choice-options">
            {certainties.map((certainty) => (
              <label key={`${asked.id}-${certainty}`} class="choice-option">
                <input
                  type="radio"
                  name={`${id}-certainty`}
                  checked={model.certainty.value === certainty}
                  onChange={() => model.sure(certainty)}
                />
                <span>
                  {words.howSure[certainty]}
                  <span class="choice-note">{price(certainty)}</span>
                </span>
              </label>
            ))}
          </div>
        </fieldset>
        <p class="field-error" id={`${id}-fault-certainty`} role="alert">
          {at('certainty')}
        </p>
      </div>

      <div class="retrieval-row">
        {row ?? (
          <>
            <button type="submit" class="act">
              {words.check}
            </button>
            <button type="button" class="quiet" onClick={model.uncover}>
              {leave}
            </button>
          </>
        )}
      </div>
    </form>
  );
}

interface NumberFieldProps {
  readonly model: RetrievalModel;
  readonly asked: Extract<Asked, { kind: 'number' }>;
  readonly id: string;
  readonly fault: string | undefined;
}

function NumberField({ model, asked, id, fault }: NumberFieldProps) {
  const { si, us, name } = quantityOf(asked.quantity);
  const unit = si.symbol === us.symbol ? si.symbol : undefined;
  return (
    <div class="retrieval-number">
      <label for={`${id}-number`}>
        {words.yours}
        <span class="choice-note">{unit === '' ? words.plainNumber : words.typed(name)}</span>
      </label>
      <span class="retrieval-field">
        <input
          id={`${id}-number`}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={model.typed.value}
          aria-invalid={fault === undefined ? undefined : 'true'}
          aria-describedby={`${id}-fault-answer`}
          onInput={(e) => model.type(e.currentTarget.value)}
        />
        {unit === undefined ? (
          <>
            <span class="u-si">{si.symbol}</span>
            <span class="u-us">{us.symbol}</span>
          </>
        ) : (
          <span>{unit}</span>
        )}
      </span>
    </div>
  );
}
