import { passageText } from '../quiz/asked.ts';
import type { Put } from '../quiz/on-paper/put.ts';
import type { Sheet } from '../quiz/on-paper/sheets.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Made } from './model.ts';
import { Running } from './Running.tsx';
import { words } from './words.en.ts';

const { paper: said } = words;

const Line = () => <span class="paper-line" />;

export function Paper({ made, sheet }: { readonly made: Made; readonly sheet: Sheet }) {
  const { units } = made.choice;
  const questions = made.sheets[sheet];
  const name = (
    <span class="paper-name">
      {said.name} <Line />
    </span>
  );
  return (
    <Running made={made} of={sheet} beside={name}>
      <h3>{said.title[sheet]}</h3>
      <p class="paper-blanks">
        <span>
          {said.date} <Line />
        </span>
        <span>
          {said.score({ count: String(questions.length) })} <Line />
        </span>
      </p>
      <p>{said.how}</p>
      <ol class="paper-questions">
        {questions.map((put) => (
          <li key={put.id}>
            <Question put={put} units={units} />
          </li>
        ))}
      </ol>
    </Running>
  );
}

function Question({ put, units }: { readonly put: Put; readonly units: UnitSystem }) {
  const { stem, asks, options, blank } = put;
  return (
    <>
      <p>
        {passageText(stem, units)} <em>{said.asks[asks]}</em>
      </p>
      {options.length > 0 && (
        <ul class="paper-options">
          {options.map(({ letter, words: text }) => (
            <li key={letter}>
              <span class="paper-box" />
              <span class="paper-letter">{letter}</span>
              <span>{passageText(text, units)}</span>
            </li>
          ))}
        </ul>
      )}
      {blank !== undefined && (
        <p class="paper-answer">
          <Line /> {blank[units]}
        </p>
      )}
    </>
  );
}
