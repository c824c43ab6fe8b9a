import { useMemo, useRef } from 'preact/hooks';
import { useSignal } from '@preact/signals';
import { percent } from '../../quantity/quantities.ts';
import { format } from '../../quantity/print.ts';
import { Later } from '../../simulation/Later.tsx';
import { LiveText } from '../../ui/LiveText.tsx';
import { useReady } from '../../ui/use-units.ts';
import { makeLogReader, type LogReader as Model, type State } from './model.ts';
import { refusal } from './refusal.ts';
import { words } from './words.en.ts';

const EXAMPLES = ['practice-1', 'practice-2', 'practice-3'] as const;

/** The page's island: a file is chosen here; all else is fetched once there is one. */
export function LogReader() {
  const model = useMemo(
    () =>
      makeLogReader((told) =>
        import('./start-worker.ts').then(({ startWorker }) => startWorker(told)),
      ),
    [],
  );
  const ready = useReady();
  const state = model.state.value;
  return (
    <div
      class="log-reader"
      id="log-reader"
      data-ready={ready}
      data-busy={state.kind === 'open' ? true : undefined}
    >
      <Chooser model={model} state={state} />
      {state.kind === 'open' && (
        <>
          <Later load={loadColumns} props={{ model }} />
          <Later load={loadResults} props={{ model }} />
        </>
      )}
    </div>
  );
}
const loadColumns = () => import('./Columns.tsx').then(({ Columns }) => Columns);
const loadResults = () => import('./Results.tsx').then(({ Results }) => Results);

function Chooser({ model, state }: { readonly model: Model; readonly state: State }) {
  const missed = useSignal(false);
  const field = useRef<HTMLInputElement>(null);
  const example = async (id: (typeof EXAMPLES)[number]): Promise<void> => {
    missed.value = false;
    try {
      const answer = await fetch(`/logs/${id}.csv`);
      if (!answer.ok) throw new Error(String(answer.status));
      await model.choose(await answer.blob(), `${id}.csv`);
    } catch {
      missed.value = true;
    }
  };
  return (
    <div class="log-choose no-print">
      <label for="log-file">{words.choose}</label>
      <p id="log-how" class="muted">
        {words.chooseHow}
      </p>
      <input
        ref={field}
        id="log-file"
        type="file"
        aria-invalid={state.kind === 'refused'}
        aria-describedby="log-refused log-how log-stays"
        accept=".csv,.txt,.tsv,.log,.dat,text/csv,text/plain,text/tab-separated-values"
        onChange={() => {
          const file = field.current?.files?.[0];
          if (file) void model.choose(file, file.name);
        }}
        // The same file chosen again after it was exported again is a new choice.
        onClick={() => {
          if (field.current) field.current.value = '';
        }}
      />
      <Standing model={model} state={state} />
      <p id="log-stays">{words.stays}</p>
      <h2 class="log-small">{words.examples}</h2>
      <p class="muted">{words.examplesHow}</p>
      <div class="log-examples">
        {EXAMPLES.map((id) => (
          <button key={id} type="button" class="quiet" onClick={() => void example(id)}>
            {words.example[id]}
          </button>
        ))}
      </div>
      <p class="field-error" role="alert">
        {missed.value && words.exampleNotFetched}
      </p>
    </div>
  );
}

/** How the reading of the file stands, under the field that it was chosen in. */
function Standing({ model, state }: { readonly model: Model; readonly state: State }) {
  const name = model.fileName.value;
  const share = state.kind === 'reading' ? state.share : 0;
  const so = words.readSoFar(format(Math.round(share * 100), percent, 'si'));
  const said =
    state.kind === 'cancelled'
      ? words.cancelled(name)
      : state.kind === 'failed'
        ? words.failed(name)
        : state.kind === 'refused'
          ? refusal(state.trouble, name)
          : '';
  return (
    <>
      {state.kind === 'reading' && (
        <div class="log-progress">
          <label for="log-share">{words.reading(name)}</label>
          <progress id="log-share" max={1} value={share} />
          <LiveText text={so} />
          <button type="button" class="quiet" onClick={model.cancel}>
            {words.cancel}
          </button>
        </div>
      )}
      <p class="field-error" id="log-refused" role="alert">
        {said}
      </p>
    </>
  );
}
