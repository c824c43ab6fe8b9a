import type { Explained } from '../../quiz/grade.ts';
import type { SessionAnswer } from '../../quiz/session.ts';
import type { RetrievalModel } from './model.ts';
import { words } from './player/words.en.ts';
import { WordsText } from './WordsText.tsx';

function tag({ correct, taken }: Explained, typed: boolean): string {
  const { tags } = words;
  if (typed) return correct ? tags.answer : taken ? tags.yourNumber : tags.mistake;
  if (correct) return taken ? tags.fitsChosen : tags.fits;
  return taken ? tags.chosen : tags.fitsNot;
}

/** Every option with its reason, whatever was answered. */
export function Explain({
  model,
  answer,
  leave = words.uncover,
}: {
  readonly model: RetrievalModel;
  readonly answer: SessionAnswer;
  readonly leave?: string;
}) {
  const { outcome, given } = answer;
  const typed = given.kind === 'typed';
  return (
    <div class="retrieval-answer">
      <p class="retrieval-verdict">
        <strong>{outcome.verdict}</strong> {typed && `${words.wrote(given.text.trim())} `}
        <span class="retrieval-marks">
          {words.marks(
            words.howSure[outcome.certainty],
            `${outcome.marks < 0 ? '−' : ''}${Math.abs(outcome.marks)}`,
            Math.abs(outcome.marks),
          )}
        </span>
      </p>
      <ul class="retrieval-reasons">
        {outcome.explained.map((e) => (
          <li key={e.id} class={e.correct ? 'fits' : undefined}>
            <p class="retrieval-option">
              <span class="retrieval-tag">
                {e.note === undefined ? tag(e, typed) : <WordsText words={e.note} />}
              </span>{' '}
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
          {model.place.value >= model.count ? words.toEnd : words.next}
        </button>
        <button type="button" class="quiet" onClick={model.uncover}>
          {leave}
        </button>
      </div>
    </div>
  );
}
