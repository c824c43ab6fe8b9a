import { useRef } from 'preact/hooks';
import { lacksInWords } from './in-words.ts';
import type { KeepModel } from './model.ts';
import { words } from './words.en.ts';

const { save } = words;
/** As long as a file may carry. */
const MOST = 60;

export function Save({ model }: { readonly model: KeepModel }) {
  const field = useRef<HTMLInputElement>(null);
  return (
    <section class="no-print" aria-labelledby="keep-save">
      <h2 id="keep-save">{save.title}</h2>
      <p>{save.about}</p>
      <form
        method="dialog"
        onSubmit={(event) => {
          event.preventDefault();
          void model.save(field.current?.value ?? '');
        }}
      >
        <label for="keep-name">{save.label}</label>
        <input
          ref={field}
          id="keep-name"
          type="text"
          autoComplete="off"
          maxLength={MOST}
          aria-describedby="keep-name-hint"
        />
        <p id="keep-name-hint" class="muted">
          {save.hint}
        </p>
        <button type="submit" class="act">
          {save.press}
        </button>
      </form>
      <SavedSaid model={model} />
    </section>
  );
}

function SavedSaid({ model }: { readonly model: KeepModel }) {
  const saved = model.saved.value;
  if (saved === 'tooLarge') return <p role="alert">{save.tooLarge}</p>;
  return (
    <p role="status">
      {saved && save.saved({ name: saved.name, answers: String(saved.bundle.answers.length) })}
      {saved && Object.keys(saved.faults).length > 0 && ` ${lacksInWords(saved.faults)}`}
    </p>
  );
}
