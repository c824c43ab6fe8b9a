import { sheetChangedAt, type OwnSheet } from '../../storage/sheets/own-sheet.ts';
import { LONGEST_NAME } from '../../storage/sheets/sheet-form.ts';
import { dateAndTimeOf } from '../../ui/dates.ts';
import { Fresh } from '../../ui/kept/Fresh.tsx';
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
      <Fresh
        id="sheet"
        most={LONGEST_NAME}
        said={{
          fresh: words.fresh,
          label: words.name,
          how: words.nameHow,
          missing: words.nameMissing,
          start: words.start,
        }}
        start={(name) => open(sheets.add(name))}
      />
      <Listed sheets={sheets} open={open} />
      <KeptFiles id="sheet" kept={sheets} said={words} />
    </>
  );
}

function Listed({ sheets, open }: ListProps) {
  const listed = sheets.listed.value;
  return (
    <section class="kept-listed" aria-labelledby="sheet-list-title">
      <h2 id="sheet-list-title" tabIndex={-1}>
        {words.title}
      </h2>
      <Undo
        gone={sheets.gone.value}
        nameOf={({ name }) => name.value}
        bringBack={sheets.bringBack}
        heading="sheet-list-title"
      />
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
