import { useLayoutEffect, useRef } from 'preact/hooks';
import { factsOf, faultsInWords } from './in-words.ts';
import type { KeepModel } from './model.ts';
import { words } from './words.en.ts';

const { remove } = words;

export function DeleteAll({ model }: { readonly model: KeepModel }) {
  const state = model.deleting.value;
  return (
    <section class="no-print" aria-labelledby="keep-delete">
      <h2 id="keep-delete">{remove.title}</h2>
      {state === 'no' && (
        <>
          <p>{remove.about}</p>
          <button type="button" class="quiet" onClick={model.askDelete}>
            {remove.ask}
          </button>
          <Back model={model} />
        </>
      )}
      {state === 'asked' && <Sure model={model} />}
      {state === 'gone' && <Gone model={model} />}
    </section>
  );
}

function Sure({ model }: { readonly model: KeepModel }) {
  const keep = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => keep.current?.focus(), []);
  const here = model.here.value;
  const facts = here === undefined ? [] : factsOf(here.bundle, here.unreadable);
  return (
    <div role="group" aria-labelledby="keep-sure">
      {facts.length === 0 ? (
        <p id="keep-sure">{remove.nothing}</p>
      ) : (
        <>
          <p id="keep-sure">{remove.sure}</p>
          <ul>
            {facts.map((fact) => (
              <li key={fact}>{fact}</li>
            ))}
          </ul>
          <p>
            {remove.also} {remove.otherFiles}
            {here !== undefined && here.unreadable > 0 && ` ${remove.unreadable}`}
          </p>
        </>
      )}
      <p class="keep-row">
        <button ref={keep} type="button" class="act" onClick={model.keepAll}>
          {remove.keep}
        </button>
        <a class="quiet" href="#keep-save">
          {remove.saveFirst}
        </a>
        <button
          type="button"
          class="quiet"
          aria-disabled={model.busy.value}
          onClick={() => void model.deleteAll()}
        >
          {remove.go}
        </button>
      </p>
    </div>
  );
}

function Gone({ model }: { readonly model: KeepModel }) {
  const back = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => back.current?.focus(), []);
  const status = model.deleteStatus.value;
  return (
    <>
      <p role="status">
        {status === 'ok' ? remove.gone : remove.notAll({ why: words.faults.why[status] })}
      </p>
      <button
        ref={back}
        type="button"
        class="quiet"
        aria-disabled={model.busy.value}
        onClick={() => void model.bringBack()}
      >
        {remove.undo}
      </button>
    </>
  );
}

function Back({ model }: { readonly model: KeepModel }) {
  const faults = model.broughtBack.value;
  return (
    <p role="status">
      {faults &&
        (Object.keys(faults).length === 0
          ? remove.back
          : faultsInWords(faults, 'notBack').join(' '))}
    </p>
  );
}
