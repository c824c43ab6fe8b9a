import { passageText } from '../quiz/asked.ts';
import type { Put, Right } from '../quiz/on-paper/put.ts';
import { SHEETS } from '../quiz/on-paper/sheets.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Made } from './model.ts';
import { Running } from './Running.tsx';
import { words } from './words.en.ts';

const { key: said } = words;

interface KeyProps {
  readonly made: Made;
  /** With the reasons against the wrong answers. */
  readonly wrongToo: boolean;
}

export function Key({ made, wrongToo }: KeyProps) {
  const { choice, sheets } = made;
  const told = { count: String(choice.count), units: said.units[choice.units] };
  const places = new Map(sheets.b.map((put, place) => [put.id, { put, place }]));
  return (
    <Running made={made} of="key">
      <h3>{said.title}</h3>
      <p>
        {choice.all
          ? said.howAll(told)
          : said.how({ ...told, lessons: choice.lessons.map(({ title }) => title) })}
      </p>
      {SHEETS.map((sheet) => (
        <section key={sheet}>
          <h4>{said.answers[sheet]}</h4>
          <ol class="paper-answers">
            {sheets[sheet].map(({ id, right }) => (
              <li key={id}>
                <strong>{answerIn(right, choice.units)}</strong>
              </li>
            ))}
          </ol>
        </section>
      ))}
      <h4>{said.reasons}</h4>
      <p>{said.inA}</p>
      <ol class="paper-questions">
        {sheets.a.map((put) => (
          <li key={put.id}>
            <Reasons put={put} onB={places.get(put.id)} units={choice.units} wrongToo={wrongToo} />
          </li>
        ))}
      </ol>
    </Running>
  );
}

function answerIn(right: Right, units: UnitSystem): string {
  switch (right.kind) {
    case 'letters':
      return right.letters.join(' ');
    case 'amount':
      return said.from({
        amount: passageText(right.words, units),
        least: right.least[units],
        most: right.most[units],
      });
  }
}

interface ReasonsProps {
  readonly put: Put;
  readonly onB: { readonly put: Put; readonly place: number } | undefined;
  readonly units: UnitSystem;
  readonly wrongToo: boolean;
}

function Reasons({ put, onB, units, wrongToo }: ReasonsProps) {
  return (
    <>
      <p>
        {onB !== undefined && <span class="paper-on-b">{alsoOnB(onB)}</span>}
        {passageText(put.stem, units)}
      </p>
      <ul class="paper-reasons">
        {put.reasons
          .filter(({ correct }) => correct || wrongToo)
          .map(({ letter, words: text, correct, mistake, why }, place) => (
            <li key={place}>
              {!correct && <>{said.wrong} </>}
              <strong>
                {letter} {passageText(text, units)}
              </strong>
              <br />
              {mistake !== undefined && `${said.ifThey({ mistake })} `}
              {passageText(why, units)}
            </li>
          ))}
      </ul>
    </>
  );
}

function alsoOnB({ put: { right }, place }: { readonly put: Put; readonly place: number }): string {
  const number = String(place + 1);
  return right.kind === 'letters'
    ? said.onB({ number, letters: right.letters.join(' ') })
    : said.onlyB({ number });
}
