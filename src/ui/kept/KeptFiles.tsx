import { useSignal, type ReadonlySignal } from '@preact/signals';
import type { Taken } from '../../storage/kept-records.ts';
import { saveFile } from '../save-file.ts';
import { words } from './words.en.ts';

interface KeptFilesProps<Came extends Taken> {
  /** Of the ids on the page: "job". */
  readonly id: string;
  readonly kept: {
    readonly loaded: ReadonlySignal<boolean>;
    readonly damaged: ReadonlySignal<readonly unknown[]>;
    readonly file: () => string | Promise<string>;
    readonly take: (text: string) => Promise<Came>;
  };
  /** What the records are called. */
  readonly said: {
    readonly save: string;
    readonly fileName: string;
    readonly take: string;
    readonly foreign: (name: string) => string;
    readonly damagedName: string;
    /** What else came along, a sentence each. */
    readonly also?: (taken: Came) => readonly string[];
    /** What the file that was saved lacks; nothing where it is whole. */
    readonly lacks?: () => string;
  };
}

/** All of them to a file, a file taken in, and what cannot be read handed out. */
export function KeptFiles<Came extends Taken>({ id, kept, said: own }: KeptFilesProps<Came>) {
  const said = useSignal('');
  const damaged = kept.damaged.value;
  const take = async (file: File): Promise<void> => {
    let text: string;
    try {
      text = await file.text();
    } catch {
      said.value = words.notRead(file.name);
      return;
    }
    const taken = await kept.take(text);
    if (!taken.ok) {
      said.value = { ...words.refused, foreign: own.foreign }[taken.fault](file.name);
      return;
    }
    const { added, changed, unreadable } = taken;
    const took = words.taken({ added: String(added), changed: String(changed) });
    said.value = [
      took,
      ...(unreadable > 0 ? [words.unreadable(String(unreadable))] : []),
      ...(own.also?.(taken) ?? []),
    ].join(' ');
  };
  const save = async (): Promise<void> => {
    saveFile(own.fileName, await kept.file());
    said.value = own.lacks?.() ?? '';
  };
  return (
    <section class="kept-files" aria-labelledby={`${id}-files-title`}>
      <h2 id={`${id}-files-title`}>{words.files}</h2>
      <p class="muted">{words.filesHow}</p>
      <p>
        <button
          type="button"
          class="quiet"
          disabled={!kept.loaded.value}
          onClick={() => void save()}
        >
          {own.save}
        </button>
      </p>
      <label for={`${id}-file`}>{own.take}</label>
      <input
        id={`${id}-file`}
        type="file"
        accept=".json,application/json"
        aria-describedby={`${id}-file-said`}
        onChange={(event) => {
          const field = event.currentTarget;
          const [file] = field.files ?? [];
          if (file) void take(file).finally(() => (field.value = ''));
        }}
      />
      <p id={`${id}-file-said`} role="status">
        {said.value}
      </p>
      {damaged.length > 0 && (
        <p>
          {words.damaged(String(damaged.length))}{' '}
          <button
            type="button"
            class="quiet"
            onClick={() => saveFile(own.damagedName, JSON.stringify(damaged, null, 1))}
          >
            {words.saveDamaged}
          </button>
        </p>
      )}
    </section>
  );
}
