import { useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { ComponentType } from 'preact';
import { isSheetDeleted, type OwnSheet } from '../../storage/sheets/own-sheet.ts';
import { sheetStore } from '../../storage/sheets/sheet-store.ts';
import { useReady } from '../../ui/use-units.ts';
import { makeSheets } from './model.ts';
import { SheetList } from './SheetList.tsx';
import type { SheetProps } from './SheetView.tsx';
import { words } from './words.en.ts';

/** The page's island: the sheets of this device, or the one that the address names. */
export function Sheets() {
  const sheets = useMemo(() => makeSheets({ store: sheetStore() }), []);
  const ready = useReady();
  const at = useSignal('');
  const loaded = useSignal<{ readonly View: ComponentType<SheetProps> } | null>(null);
  const missed = useSignal(false);
  const frame = useRef<HTMLDivElement>(null);
  /** A sheet was opened here, and not by the address: the keys go along. */
  const arrived = useRef(false);

  useEffect(() => {
    const look = (): void => {
      at.value = location.hash.slice(1);
    };
    const leave = (): void => sheets.leave();
    const hidden = (): void => {
      if (document.visibilityState === 'hidden') void sheets.keep();
    };
    look();
    void sheets.load();
    const stop = sheets.watch();
    addEventListener('popstate', look);
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hidden);
    return () => {
      stop();
      removeEventListener('popstate', look);
      removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', hidden);
    };
  }, []);

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

  const open = (next: OwnSheet): void => {
    arrived.current = true;
    history.pushState(null, '', `#${next.id}`);
    at.value = next.id;
    frame.current?.scrollIntoView({ block: 'start' });
  };
  const close = (): void => {
    history.pushState(null, '', location.pathname);
    at.value = '';
    frame.current?.scrollIntoView({ block: 'start' });
    document.getElementById('sheet-new')?.focus({ preventScroll: true });
  };
  const fault = sheets.fault.value;
  return (
    <div
      class="jobs own-sheets"
      id="own-sheets"
      ref={frame}
      data-ready={ready && sheets.loaded.value && (!opened || shown)}
    >
      <p class="field-error no-print" role="alert">
        {fault && words.fault[fault]}
      </p>
      {opened ? (
        there ? (
          <there.View key={sheet.id} sheets={sheets} id={sheet.id} close={close} />
        ) : (
          <p role="status">{missed.value ? words.missed : words.fetching}</p>
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
