import type { Sheet } from '../quiz/on-paper/sheets.ts';
import { Line } from './Line.tsx';
import type { Made } from './model.ts';
import { Question } from './Question.tsx';
import { Running } from './Running.tsx';
import { words } from './words.en.ts';

const { paper: said } = words;

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
