import { useEffect, useMemo, useRef } from 'preact/hooks';
import { dateOf } from '../../ui/dates.ts';
import { loadIndex } from '../load.ts';
import { loadSets } from '../load-sets.ts';
import { Missed } from '../Missed.tsx';
import { AreaTable } from './AreaTable.tsx';
import { ItemTable } from './ItemTable.tsx';
import { classModel, type ClassModel } from './model.ts';
import { Topics } from './Topics.tsx';
import { words } from './words.en.ts';

interface Props {
  readonly model: ClassModel;
}

/** @param base the folder that the site stands in */
export function ClassView({ base }: { readonly base: string }) {
  const model = useMemo(
    () =>
      classModel({
        now: Date.now,
        minutesWest: (at) => new Date(at).getTimezoneOffset(),
        loadIndex: () => loadIndex(base),
        loadSets: (lessons) => loadSets(base, lessons),
      }),
    [base],
  );
  useEffect(() => void model.need(), [model]);
  const here = model.members.value.length > 0;
  const miss = model.miss.value;
  return (
    <div class="class">
      <Choose model={model} />
      <Members model={model} />
      {miss !== undefined && <Missed miss={miss} again={() => void model.need()} />}
      {here && model.index.value !== undefined && (
        <>
          <Topics model={model} />
          <AreaTable model={model} />
          <ItemTable model={model} />
          <p class="no-print">
            <button type="button" class="quiet" onClick={() => print()}>
              {words.print}
            </button>
          </p>
        </>
      )}
    </div>
  );
}

function Choose({ model }: Props) {
  const said = model.said.value;
  const field = useRef<HTMLInputElement>(null);
  async function take(): Promise<void> {
    const { current } = field;
    const files = [...(current?.files ?? [])];
    if (current === null || files.length === 0) return;
    // The same file chosen again, after it was saved again, is a new choice.
    await model.take(files).finally(() => (current.value = ''));
    await model.need();
  }
  // Files that were chosen before this script was here.
  useEffect(() => void take(), [model]);
  return (
    <div class="class-choose no-print">
      <label for="class-files">{words.choose}</label>
      <input
        ref={field}
        id="class-files"
        type="file"
        multiple
        accept=".json,application/json"
        aria-describedby="class-how class-said"
        onChange={() => void take()}
      />
      <p id="class-how" class="muted">
        {words.page.how}
      </p>
      <div id="class-said" role="status">
        {said.map((sentence) => (
          <p key={sentence} class="today-fault">
            {sentence}
          </p>
        ))}
      </div>
    </div>
  );
}

function Members({ model }: Props) {
  const members = model.members.value;
  const { title, none, said, remove, name: label } = words.learners;
  return (
    <section aria-labelledby="class-members">
      <h2 id="class-members">{title}</h2>
      {members.length === 0 ? (
        <p class="muted">{none}</p>
      ) : (
        <ul class="class-members">
          {members.map((one) => {
            const name = model.nameOf(one);
            return (
              <li key={one.number}>
                <input
                  type="text"
                  aria-label={label}
                  autoComplete="off"
                  maxLength={60}
                  value={name}
                  onChange={(event) => model.rename(one, event.currentTarget.value)}
                />
                <span class="muted">
                  {said({ answers: String(one.answers.length), saved: dateOf(one.written) })}
                </span>
                <button type="button" class="quiet no-print" onClick={() => model.remove(one)}>
                  {remove({ name })}
                </button>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}
