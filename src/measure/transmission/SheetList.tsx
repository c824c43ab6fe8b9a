import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { sheetChangedAt, type OwnSheet } from '../../storage/sheets/own-sheet.ts';
import { LONGEST_NAME } from '../../storage/sheets/sheet-form.ts';
import { dateAndTimeOf } from '../../ui/dates.ts';
import { KeptFiles } from '../../ui/kept/KeptFiles.tsx';
import { Undo } from '../../ui/kept/Undo.tsx';
import { words as kept } from '../../ui/kept/words.en.ts';
import type { SheetsModel } from './model.ts';
import { words } from './words.en.ts';

interface ListProps {
  readonly sheets: SheetsModel;
  readonly open: (sheet: OwnSheet) => void;
}

/** A new sheet, the sheets that there are, and the way to a file and back. */
export function SheetList({ sheets, open }: ListProps) {
  return (
    <>
      <Fresh sheets={sheets} open={open} />
      <Listed sheets={sheets} open={open} />
      <KeptFiles id="sheet" kept={sheets} said={words} />
    </>
  );
}

function Fresh({ sheets, open }: ListProps) {
  const missing = useSignal(false);
  const field = useRef<HTMLInputElement>(null);
  return (
    <form
      class="job-fresh"
      // Pressed before the script has come it stays where it is, and keeps what was typed.
      method="dialog"
      onSubmit={(event) => {
        event.preventDefault();
        const name = (field.current?.value ?? '').trim();
        if (name === '') {
          missing.value = true;
          field.current?.focus();
        } else open(sheets.add(name));
      }}
    >
      <h2>{words.fresh}</h2>
      <label for="sheet-new">{words.name}</label>
      <input
        ref={field}
        id="sheet-new"
        type="text"
        autoComplete="off"
        maxLength={LONGEST_NAME}
        aria-describedby="sheet-new-how sheet-new-wrong"
        aria-invalid={missing.value}
        onInput={() => (missing.value = false)}
      />
      <p id="sheet-new-how" class="muted">
        {words.nameHow}
      </p>
      <p id="sheet-new-wrong" class="field-error" role="alert">
        {missing.value && words.nameMissing}
      </p>
      <button type="submit" class="act">
        {words.start}
      </button>
    </form>
  );
}

function Listed({ sheets, open }: ListProps) {
  const listed = sheets.listed.value;
  return (
    <section class="job-listed" aria-labelledby="sheet-list-title">
      <h2 id="sheet-list-title" tabIndex={-1}>
        {words.title}
      </h2>
      <Undo name={sheets.undo.value?.name.value} bringBack={sheets.bringBack} />
      {!sheets.loaded.value ? (
        <p class="muted">{words.loading}</p>
      ) : listed.length === 0 ? (
        <p class="muted">{words.none}</p>
      ) : (
        <ul>
          {listed.map((sheet) => (
            <Line key={sheet.id} sheets={sheets} open={open} sheet={sheet} />
          ))}
        </ul>
      )}
    </section>
  );
}

function Line({ sheets, open, sheet }: ListProps & { readonly sheet: OwnSheet }) {
  const typed = Object.values(sheet.fields).filter(({ value }) => value !== null).length;
  const when = dateAndTimeOf(sheetChangedAt(sheet));
  return (
    <li>
      <a
        href={`#${sheet.id}`}
        onClick={(event) => {
          event.preventDefault();
          open(sheet);
        }}
      >
        {sheet.name.value}
      </a>
      <span class="muted">{words.line({ typed: String(typed), when })}</span>
      <button
        type="button"
        class="quiet"
        aria-label={kept.remove(sheet.name.value)}
        onClick={() => {
          sheets.remove(sheet);
          document.getElementById('sheet-list-title')?.focus();
        }}
      >
        {kept.removeShort}
      </button>
    </li>
  );
}
