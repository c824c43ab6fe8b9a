import { SHEETS } from '../quiz/on-paper/sheets.ts';
import { answerIn } from './answer-in.ts';
import type { Made } from './model.ts';
import { Reasons } from './Reasons.tsx';
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
      <p>{said.topDown}</p>
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
