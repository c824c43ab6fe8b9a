import { passageText } from '../quiz/asked.ts';
import type { Put } from '../quiz/on-paper/put-parts.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { answerIn } from './answer-in.ts';
import { words } from './words.en.ts';

const { key: said } = words;

interface ReasonsProps {
  readonly put: Put;
  readonly onB: { readonly put: Put; readonly place: number } | undefined;
  readonly units: UnitSystem;
  readonly wrongToo: boolean;
}

export function Reasons({ put, onB, units, wrongToo }: ReasonsProps) {
  return (
    <>
      <p>
        {onB !== undefined && <span class="paper-on-b">{alsoOnB(onB, units)}</span>}
        {passageText(put.stem, units)}
      </p>
      <ul class="paper-reasons">
        {put.reasons
          .filter(({ correct }) => correct || wrongToo)
          .map(({ letter, words: text, correct, mark, mistake, why }, place) => (
            <li key={place}>
              {!correct && <>{mark === undefined ? said.wrong : said.marks[mark]} </>}
              {correct && put.right.kind === 'gaps' && (
                <>{said.missing({ places: answerIn(put.right, units) })} </>
              )}
              <strong>
                {letter !== undefined && `${letter}. `}
                {passageText(text, units)}
              </strong>
              <br />
              {mistake !== undefined && `${said.ifThey({ mistake })} `}
              {passageText(why, units)}
            </li>
          ))}
      </ul>
      {put.cheapest !== undefined && (
        <>
          <p>{said.cheapest({ minutes: String(put.cheapest.minutes) })}</p>
          <ul class="paper-reasons">
            {put.cheapest.readings.map(({ words: text, why }, place) => (
              <li key={place}>
                <strong>{passageText(text, units)}</strong>
                <br />
                {passageText(why, units)}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function alsoOnB(
  { put: { right }, place }: { readonly put: Put; readonly place: number },
  units: UnitSystem,
): string {
  const number = String(place + 1);
  return right.kind === 'amount' || right.kind === 'gaps'
    ? said.onlyB({ number })
    : said.onB({ number, answer: answerIn(right, units) });
}
