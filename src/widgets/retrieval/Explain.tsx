import type { Explained } from '../../quiz/grade.ts';
import type { SessionAnswer } from '../../quiz/session.ts';
import type { RetrievalModel } from './model.ts';
import { words } from './player/words.en.ts';
import { Stem } from './Stem.tsx';
import { WordsText } from './WordsText.tsx';

function tag({ correct, taken }: Explained, typed: boolean): string {
  const { tags } = words;
  if (typed) return correct ? tags.answer : taken ? tags.yourNumber : tags.mistake;
  if (correct) return taken ? tags.fitsChosen : tags.fits;
  return taken ? tags.chosen : tags.fitsNot;
}

/** Whether it was right, what was typed, and what it earned. */
export function Verdict({ outcome, given }: Pick<SessionAnswer, 'outcome' | 'given'>) {
  return (
    <p class="retrieval-verdict">
      <strong>{outcome.verdict}</strong>{' '}
      {given.kind === 'typed' && `${words.wrote(given.text.trim())} `}
      <span class="retrieval-marks">
        {words.marks(
          words.howSure[outcome.certainty],
          `${outcome.marks < 0 ? '−' : ''}${Math.abs(outcome.marks)}`,
          Math.abs(outcome.marks),
        )}
      </span>
    </p>
  );
}

interface ReasonsProps {
  readonly explained: readonly Explained[];
  readonly typed: boolean;
}

/** Every option with its reason, whatever was answered. */
export function Reasons({ explained, typed }: ReasonsProps) {
  return (
    <ul class="retrieval-reasons">
      {explained.map((e) => (
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
  );
}

export function Explain({
  model,
  answer: { outcome, given },
  leave = words.uncover,
}: {
  readonly model: RetrievalModel;
  readonly answer: SessionAnswer;
  readonly leave?: string;
}) {
  const asked = model.question.value;
  const tryIt = asked?.tryIt;
  return (
    <div class="retrieval-answer">
      <Verdict outcome={outcome} given={given} />
      {asked !== undefined && <Stem asked={asked} />}
      <Reasons explained={outcome.explained} typed={given.kind === 'typed'} />
      {tryIt !== undefined && (
        <p>
          {/* In a tab of its own: the questions stay as they are. */}
          <a href={tryIt} target="_blank" rel="noopener">
            {words.tryIt}
          </a>
        </p>
      )}
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
