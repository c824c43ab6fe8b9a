import { useEffect, useMemo } from 'preact/hooks';
import { saveFile } from '../ui/save-file.ts';
import { useReady } from '../ui/use-units.ts';
import { DeleteAll } from './DeleteAll.tsx';
import { factsOf, faultsInWords } from './in-words.ts';
import { keepModel, type KeepModel } from './model.ts';
import { Save } from './Save.tsx';
import { TakeIn } from './TakeIn.tsx';
import { words } from './words.en.ts';

const inBrowser = (): KeepModel =>
  keepModel({
    load: () => import('./stores.ts'),
    device: ({ device }) => device(),
    save: saveFile,
    now: Date.now,
    // As another tab's write is told: units, light and dark follow it.
    changed: () => dispatchEvent(new StorageEvent('storage')),
  });

/** Everything that this device keeps: to a file, out of a file, and away. */
export function Keep() {
  const ready = useReady();
  const model = useMemo(() => (ready ? inBrowser() : undefined), [ready]);
  useEffect(() => {
    if (model === undefined) return;
    void model.look();
    const seen = (): void => {
      if (document.visibilityState === 'visible') void model.look();
    };
    document.addEventListener('visibilitychange', seen);
    return () => document.removeEventListener('visibilitychange', seen);
  }, [model]);
  if (model === undefined) return <p role="status">{words.looking}</p>;
  return (
    <div class="keep" id="keep" data-ready={model.here.value !== undefined}>
      <Here model={model} />
      {model.here.value !== undefined && (
        <>
          <Save model={model} />
          <TakeIn model={model} />
          <DeleteAll model={model} />
        </>
      )}
    </div>
  );
}

function Here({ model }: { readonly model: KeepModel }) {
  const here = model.here.value;
  if (model.stuck.value) {
    return (
      <p role="alert">
        {words.stuck}{' '}
        <button type="button" class="quiet" onClick={() => void model.look()}>
          {words.again}
        </button>
      </p>
    );
  }
  if (here === undefined) return <p role="status">{words.looking}</p>;
  const facts = factsOf(here.bundle, here.unreadable);
  const empty = model.isEmpty.value && Object.keys(here.faults).length === 0;
  return (
    <section aria-labelledby="keep-here">
      <h2 id="keep-here">{words.here.title}</h2>
      {faultsInWords(here.faults, 'unread').map((said) => (
        <p key={said} class="keep-fault">
          {said}
        </p>
      ))}
      {empty && (
        <p>
          {words.here.none} <a href="/practise/today/">{words.here.toToday}</a>.
        </p>
      )}
      {facts.length > 0 && (
        <ul>
          {facts.map((fact) => (
            <li key={fact}>{fact}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
