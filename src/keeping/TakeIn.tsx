import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Chosen } from '../storage/bundle/compare.ts';
import type { Sides } from '../storage/bundle/take-in.ts';
import { dateOf } from '../ui/dates.ts';
import { lossesOf, rowsOf } from './compared-in-words.ts';
import { faultsInWords, planInWords } from './in-words.ts';
import type { KeepModel, Opened, Refusal } from './model.ts';
import { words } from './words.en.ts';

const { take } = words;

export function TakeIn({ model }: { readonly model: KeepModel }) {
  const opened = model.opened.value;
  const sides = model.sides.value;
  const refusal = model.refusal.value;
  return (
    <section class="no-print" aria-labelledby="keep-take">
      <h2 id="keep-take">{take.title}</h2>
      <p>{take.about}</p>
      <label for="keep-file">{take.label}</label>
      <input
        id="keep-file"
        type="file"
        accept=".json,application/json"
        aria-invalid={refusal !== undefined}
        aria-describedby="keep-file-wrong"
        onChange={(event) => {
          const field = event.currentTarget;
          const [file] = field.files ?? [];
          // The same file can be chosen again, once it has been put right.
          if (file) void model.choose(file).finally(() => (field.value = ''));
        }}
      />
      <p id="keep-file-wrong" class="field-error" role="alert">
        {refusal && refusedInWords(refusal)}
      </p>
      {opened && sides && <DryRun model={model} opened={opened} sides={sides} />}
      <Done model={model} />
    </section>
  );
}

const refusedInWords = (refusal: Refusal): string =>
  refusal.kind === 'notRead' ? take.notRead(refusal) : take.refused(refusal);

interface DryRunProps {
  readonly model: KeepModel;
  readonly opened: Opened;
  readonly sides: Sides;
}

function DryRun({ model, opened, sides }: DryRunProps) {
  const head = useRef<HTMLHeadingElement>(null);
  const { name, bundle, compared } = opened;
  useLayoutEffect(() => head.current?.focus(), [bundle]);
  const losses = lossesOf(opened, sides);
  return (
    <div class="keep-dry-run">
      <h3 ref={head} tabIndex={-1}>
        {take.compared}
      </h3>
      <p>
        {take.about1({ name, date: dateOf(bundle.written) })}{' '}
        {bundle.name === null ? take.unnamed : take.named({ name: bundle.name })}
      </p>
      <dl>
        {rowsOf(compared).map(([part, said]) => (
          <div key={part}>
            <dt>{part}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
      {compared.answers.ahead > 0 && (
        <p class="keep-fault">{take.ahead({ count: String(compared.answers.ahead) })}</p>
      )}
      {opened.bringsNothing ? (
        <p role="status">{take.nothing}</p>
      ) : (
        <>
          {opened.toChoose.map((part) => (
            <WhichSide key={part} part={part} model={model} opened={opened} sides={sides} />
          ))}
          <div role="status">
            {losses.length === 0 ? (
              <p>{take.lost.nothing}</p>
            ) : (
              <>
                <p>
                  <strong>{take.lost.title}</strong>
                </p>
                <ul>
                  {losses.map((loss) => (
                    <li key={loss}>{loss}</li>
                  ))}
                </ul>
              </>
            )}
          </div>
          <p>{take.mine}</p>
        </>
      )}
      <p class="keep-row">
        {!opened.bringsNothing && (
          <button
            type="button"
            class="act"
            aria-disabled={model.busy.value}
            onClick={() => void model.take()}
          >
            {take.press}
          </button>
        )}
        <button type="button" class="quiet" onClick={model.leave}>
          {take.leave}
        </button>
      </p>
    </div>
  );
}

interface WhichSideProps extends DryRunProps {
  readonly part: Chosen;
}

function WhichSide({ part, model, opened, sides }: WhichSideProps) {
  const { legend, here, file } = take.sides[part];
  const said = (say: string | ((p: { what: string }) => string), of: Opened['bundle']): string =>
    typeof say === 'string' ? say : say({ what: of.plan ? planInWords(of.plan, of) : '' });
  const options = [
    ['here', said(here, opened.here)],
    ['file', said(file, opened.bundle)],
  ] as const;
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      <div class="choice-options">
        {options.map(([side, text]) => (
          <label key={side} class="choice-option">
            <input
              type="radio"
              name={`keep-${part}`}
              checked={sides[part] === side}
              onChange={() => model.setSide(part, side)}
            />
            <span>{text}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function Done({ model }: { readonly model: KeepModel }) {
  const done = model.done.value;
  const said =
    done === undefined
      ? []
      : done === 'undone'
        ? [take.undone]
        : 'undoFaults' in done
          ? faultsInWords(done.undoFaults, 'notUndone')
          : [
              ...(done.faults.answers === undefined
                ? [take.done({ answers: String(done.compared.answers.added) })]
                : []),
              ...faultsInWords(done.faults, 'untaken'),
            ];
  const box = useRef<HTMLDivElement>(null);
  // What was pressed is gone, and the page is shorter: eyes and keyboard go to what came of it.
  useLayoutEffect(() => {
    if (done !== undefined) box.current?.focus();
  }, [done]);
  const canUndo = done !== undefined && done !== 'undone' && 'undo' in done;
  return (
    <div role="status" ref={box} tabIndex={-1}>
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {canUndo && (
        <button
          type="button"
          class="quiet"
          aria-disabled={model.busy.value}
          onClick={() => void model.undo()}
        >
          {take.undo}
        </button>
      )}
    </div>
  );
}
