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
  const session = player.session.value;
  const stage = player.stage.value;
  const leave = (): void => void model.leave();
  // The second button of a question uncovers the lesson in a lesson; here it leaves the round.
  const here = { ...player, uncover: leave };

  if (asked === undefined) {
    if (summary === undefined || session === undefined) return null;
    return (
      <div class="retrieval-panel">
        <Over
          summary={summary}
          session={session}
          objectives={sets.flatMap(({ lesson, objectives }) =>
            objectives.map((one) => ({ ...one, href: `/lessons/${lesson}/#${one.section}` })),
          )}
        />
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
