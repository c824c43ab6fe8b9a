import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { ComponentType } from 'preact';
import { isSheetDeleted } from '../../storage/sheets/own-sheet.ts';
import { sheetStore } from '../../storage/sheets/sheet-store.ts';
import { useOpened } from '../../ui/kept/use-opened.ts';
import { words as kept } from '../../ui/kept/words.en.ts';
import { useReady } from '../../ui/use-units.ts';
import { makeSheets } from './model.ts';
import { SheetList } from './SheetList.tsx';
import type { SheetProps } from './SheetView.tsx';
import { words } from './words.en.ts';

/** The page's island: the sheets of this device, or the one that the address names. */
export function Sheets() {
  const sheets = useMemo(() => makeSheets({ store: sheetStore() }), []);
  const ready = useReady();
  const { at, frame, arrived, open, close } = useOpened(sheets, 'sheet-new');
  const loaded = useSignal<{ readonly View: ComponentType<SheetProps> } | null>(null);
  const missed = useSignal(false);
  const sheet = at.value === '' ? undefined : sheets.sheet(at.value);
  const opened = sheet !== undefined && !isSheetDeleted(sheet);
  useEffect(() => {
    if (!opened || loaded.value !== null) return;
    import('./SheetView.tsx').then(
      ({ SheetView }) => {
        loaded.value = { View: SheetView };
      },
      () => {
        missed.value = true;
      },
    );
  }, [opened]);
  const there = loaded.value;
  const shown = opened && there !== null;
  useEffect(() => {
    if (!shown || !arrived.current) return;
    arrived.current = false;
    document.getElementById('sheet-ratios-first')?.focus({ preventScroll: true });
  }, [shown]);

  const fault = sheets.fault.value;
  return (
    <div
      class="jobs own-sheets"
      id="own-sheets"
      ref={frame}
      data-ready={ready && sheets.loaded.value && (!opened || shown)}
    >
      <p class="field-error no-print" role="alert">
        {fault && kept.fault[fault]}
      </p>
      {opened ? (
        there ? (
          <there.View key={sheet.id} sheets={sheets} id={sheet.id} close={close} />
        ) : (
          <p role="status">{missed.value ? kept.missed : kept.fetching}</p>
        )
      ) : (
        <>
          {at.value !== '' && sheets.loaded.value && <p role="status">{words.gone}</p>}
          <SheetList sheets={sheets} open={open} />
        </>
      )}
    </div>
  );
}
