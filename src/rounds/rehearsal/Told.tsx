import type { Asked } from '../../quiz/asked.ts';
import { explainedOpen } from '../../quiz/rehearsal/explained-open.ts';
import { gradedAgain, standingOf } from '../../quiz/rehearsal/standing.ts';
import type { Rehearsal, RehearsalItem } from '../../storage/rehearsals.ts';
import { Reasons, Verdict } from '../../widgets/retrieval/Explain.tsx';
import { Stem } from '../../widgets/retrieval/Stem.tsx';
import { WordsText } from '../../widgets/retrieval/WordsText.tsx';
import { Missed } from '../Missed.tsx';
import type { RehearsalModel } from './model.ts';
import { words } from './play-words.en.ts';

const { result } = words;

interface ToldProps {
  readonly model: RehearsalModel;
  readonly one: Rehearsal;
}
interface Placed {
  readonly item: RehearsalItem;
  readonly place: number;
}

/** Every question with its explanations: what was not right first, and of that the surest. */
export function Told({ model, one }: ToldProps) {
  const miss = model.miss.value;
  const placed = one.items.map((item, at): Placed => ({ item, place: at + 1 }));
  const right = placed.filter(({ item }) => item.result === 'right');
  const missed = placed
    .filter(({ item }) => item.result !== 'right')
    .sort((a, b) => sureOf(b.item) - sureOf(a.item));
  const again = (): void => void model.show({ at: 'result', begun: one.begun });
  return (
    <section class="rehearsal-told no-print">
      <h3>{result.told}</h3>
      {miss !== undefined && <Missed miss={miss} again={again} />}
      {miss === undefined &&
        [
          { title: result.missed, all: missed },
          { title: result.rightOnes, all: right },
        ].map(
          ({ title, all }) =>
            all.length > 0 && (
              <section key={title}>
                <h4>{title}</h4>
                {all.map(({ item, place }) => (
                  <Question
                    key={item.id}
                    asked={model.askedOf(one, item)}
                    item={item}
                    place={place}
                  />
                ))}
              </section>
            ),
        )}
    </section>
  );
}

/** One that was left open comes after all that were answered. */
const sureOf = ({ certainty, result: came }: RehearsalItem): number =>
  came === undefined ? 0 : (certainty ?? 0);

function Question({ asked, item, place }: Placed & { readonly asked: Asked | undefined }) {
  return (
    <details class="more">
      <summary>
        <span>
          {result.question({ place: String(place) })}
          {asked !== undefined && (
            <span class="rehearsal-stem">
              <WordsText words={asked.stem} />
            </span>
          )}
        </span>
      </summary>
      <div class="more-body retrieval-answer">
        {asked === undefined ? <p>{result.gone}</p> : <Reasoned asked={asked} item={item} />}
      </div>
    </details>
  );
}

function Reasoned({ asked, item }: { readonly asked: Asked; readonly item: RehearsalItem }) {
  const { given, certainty, result: came } = item;
  const graded =
    came !== undefined && given !== undefined && certainty !== undefined
      ? gradedAgain(asked, given, certainty)
      : undefined;
  return (
    <>
      <Stem asked={asked} />
      {graded?.ok === true && given !== undefined ? (
        <>
          <Verdict outcome={graded.outcome} given={given} />
          <Reasons explained={graded.outcome.explained} typed={given.kind === 'typed'} />
        </>
      ) : (
        <>
          <p>{came === undefined ? whyNot(asked, item) : result.changed}</p>
          <Reasons explained={explainedOpen(asked)} typed={asked.kind === 'number'} />
        </>
      )}
    </>
  );
}

function whyNot(asked: Asked, item: RehearsalItem): string {
  const standing = standingOf(asked, item);
  return standing === 'unsure' || standing === 'unread' ? result[standing] : result.leftOpen;
}
