import { Ask } from '../widgets/retrieval/Ask.tsx';
import { Explain } from '../widgets/retrieval/Explain.tsx';
import { Over } from '../widgets/retrieval/Over.tsx';
import type { QuestionSet } from '../quiz/question-set.ts';
import type { RetrievalModel } from '../widgets/retrieval/model.ts';
import type { TodayModel } from './model.ts';
import { words } from './words.en.ts';

interface AskingProps {
  readonly model: TodayModel;
  readonly asking: { readonly player: RetrievalModel; readonly sets: readonly QuestionSet[] };
}

/** The question that is on, its explanation, or how the round went. */
export function Asking({ model, asking: { player, sets } }: AskingProps) {
  const asked = player.question.value;
  const summary = player.summary.value;
  const stage = player.stage.value;
  const leave = (): void => void model.leave();
  // The second button of a question uncovers the lesson in a lesson; here it leaves the round.
  const here = { ...player, uncover: leave };

  if (asked === undefined) {
    if (summary === undefined) return null;
    const lessons = new Map(model.index.value?.lessons.map(({ id, title }) => [id, title]));
    const weak = new Set(summary.again.map(({ id }) => id));
    const next = sets.filter(({ questions }) => questions.some(({ id }) => weak.has(id)));
    return (
      <div class="retrieval-panel">
        <Over summary={summary} objectives={sets.flatMap(({ objectives }) => objectives)} />
        {next.length > 0 && (
          <>
            <h3>{words.readNext}</h3>
            <ul>
              {next.map(({ lesson }) => (
                <li key={lesson}>
                  <a class="way" href={`/lessons/${lesson}/`}>
                    {lessons.get(lesson) ?? lesson}
                  </a>
                </li>
              ))}
            </ul>
          </>
        )}
        <button type="button" class="act" onClick={leave}>
          {words.another}
        </button>
      </div>
    );
  }
  const last = player.last.value;
  return (
    <div class="retrieval-panel">
      {stage === 'explained' && last !== undefined ? (
        <Explain model={here} answer={last} leave={words.leave} />
      ) : (
        <Ask key={asked.id} model={here} asked={asked} id="today" leave={words.leave} />
      )}
    </div>
  );
}
