import type { Explained } from '../../quiz/grade.ts';
import type { SessionAnswer } from '../../quiz/session.ts';
import { howSure } from './how-sure.ts';
import type { RetrievalModel } from './model.ts';
import { WordsText } from './WordsText.tsx';

function tag({ correct, taken }: Explained, typed: boolean): string {
  if (typed)
    return correct ? 'The answer' : taken ? 'Your number is this one' : 'A mistake people make';
  if (correct) return taken ? 'Fits, and you chose it' : 'Fits';
  return taken ? 'You chose this' : 'Does not fit';
}

/** Every option with its reason, whatever was answered. */
export function Explain({
  model,
  answer,
}: {
  readonly model: RetrievalModel;
  readonly answer: SessionAnswer;
}) {
  const { outcome, given } = answer;
  const typed = given.kind === 'typed';
  return (
    <div class="retrieval-answer">
      <p class="retrieval-verdict">
        <strong>{outcome.verdict}</strong> {typed && `You wrote “${given.text.trim()}”. `}
        <span class="retrieval-marks">
          {`${howSure[outcome.certainty]}: ${outcome.marks < 0 ? '−' : ''}${Math.abs(outcome.marks)} ${
            Math.abs(outcome.marks) === 1 ? 'mark' : 'marks'
          }.`}
        </span>
      </p>
      <ul class="retrieval-reasons">
        {outcome.explained.map((e) => (
          <li key={e.id} class={e.correct ? 'fits' : undefined}>
            <p class="retrieval-option">
              <span class="retrieval-tag">{tag(e, typed)}</span>{' '}
              <strong>
                <WordsText words={e.words} />
              </strong>
            </p>
            <p>
              <WordsText words={e.why} />
            </p>
          </li>
        ))}
      </ul>
      <div class="retrieval-row">
        <button type="button" class="act" onClick={model.next}>
          {model.place.value >= model.count ? 'See how it went' : 'Next question'}
        </button>
        <button type="button" class="quiet" onClick={model.uncover}>
          Show the lesson
        </button>
      </div>
    </div>
  );
}
