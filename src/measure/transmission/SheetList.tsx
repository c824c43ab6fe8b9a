import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { sheetChangedAt, type OwnSheet } from '../../storage/sheets/own-sheet.ts';
import { LONGEST_NAME } from '../../storage/sheets/sheet-form.ts';
import { dateAndTimeOf } from '../../ui/dates.ts';
import { saveFile } from '../../ui/save-file.ts';
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
      <Files sheets={sheets} />
    </>
  );
}

function Fresh({ sheets, open }: ListProps) {
  const missing = useSignal(false);
  const field = useRef<HTMLInputElement>(null);
  return (
    <form
      class="job-fresh"
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
  const removed = sheets.undo.value;
  return (
    <section class="job-listed" aria-labelledby="sheet-list-title">
      <h2 id="sheet-list-title" tabIndex={-1}>
        {words.title}
      </h2>
      <p role="status" class="job-undo">
        {removed && (
          <>
            {words.removed(removed.name.value)}{' '}
            <button type="button" class="quiet" onClick={sheets.bringBack}>
              {words.undo}
            </button>
          </>
        )}
      </p>
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
        aria-label={words.remove(sheet.name.value)}
        onClick={() => {
          sheets.remove(sheet);
          document.getElementById('sheet-list-title')?.focus();
        }}
      >
        {words.removeShort}
      </button>
    </li>
  );
}

function Files({ sheets }: { readonly sheets: SheetsModel }) {
  const said = useSignal('');
  const damaged = sheets.damaged.value;
  const take = async (file: File): Promise<void> => {
    let text: string;
    try {
      text = await file.text();
    } catch {
      said.value = words.notRead(file.name);
      return;
    }
    const taken = await sheets.take(text);
    if (!taken.ok) {
      said.value = words.refused[taken.fault](file.name);
      return;
    }
    const { added, changed, unreadable } = taken;
    const took = words.taken({ added: String(added), changed: String(changed) });
    said.value = unreadable > 0 ? [took, words.unreadable(String(unreadable))].join(' ') : took;
  };
  return (
    <section class="job-files" aria-labelledby="sheet-files-title">
      <h2 id="sheet-files-title">{words.files}</h2>
      <p class="muted">{words.filesHow}</p>
      <p>
        <button
          type="button"
          class="quiet"
          disabled={!sheets.loaded.value}
          onClick={() => saveFile(words.fileName, sheets.file())}
        >
          {words.save}
        </button>
      </p>
      <label for="sheet-file">{words.take}</label>
      <input
        id="sheet-file"
        type="file"
        accept=".json,application/json"
        aria-describedby="sheet-file-said"
        onChange={(event) => {
          const field = event.currentTarget;
          const [file] = field.files ?? [];
          if (file) void take(file).finally(() => (field.value = ''));
        }}
      />
      <p id="sheet-file-said" role="status">
        {said.value}
      </p>
      {damaged.length > 0 && (
        <p>
          {words.damaged(String(damaged.length))}{' '}
          <button
            type="button"
            class="quiet"
            onClick={() => saveFile(words.damagedName, JSON.stringify(damaged, null, 1))}
          >
            {words.saveDamaged}
          </button>
        </p>
      )}
    </section>
  );
}
