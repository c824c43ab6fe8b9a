import type { AskedCase } from '../../../quiz/asked.ts';
import { minutesOf } from '../../../quiz/case-minutes.ts';
import type { FormProps } from '../form-props.ts';
import { WordsText } from '../WordsText.tsx';
import { words } from './words.en.ts';

/** A car that has something, or nothing: one pays for readings in minutes, and names it. */
export function ShortCase({ model, asked, id }: FormProps<AskedCase>) {
  const { readings, options, arrives } = asked;
  const given = model.ticked.value;
  const taken = given.flatMap((one) => readings.find((reading) => reading.id === one) ?? []);
  const spent = minutesOf(taken, arrives);
  const named = (option: string): void =>
    model.give([...given.filter((one) => !options.some((other) => other.id === one)), option]);

  return (
    <div class="form-case">
      <fieldset class="choice">
        <legend>{words.readings}</legend>
        <ul>
          {readings.map((reading) => {
            const read = taken.includes(reading);
            return (
              <li key={reading.id}>
                <span id={`${id}-reading-${reading.id}`}>
                  <WordsText words={reading.words} />
                </span>
                {read ? (
                  <strong>
                    <WordsText words={reading.reads} />
                  </strong>
                ) : (
                  <button
                    type="button"
                    class="quiet"
                    id={`${id}-take-${reading.id}`}
                    aria-labelledby={`${id}-take-${reading.id} ${id}-reading-${reading.id}`}
                    onClick={() => model.give([...given, reading.id])}
                  >
                    {words.take(String(minutesOf([...taken, reading], arrives) - spent))}
                  </button>
                )}
              </li>
            );
          })}
        </ul>
        <p role="status">
          {words.spent(String(spent))}{' '}
          {taken.at(-1) !== undefined && (
            <span class="for-ears">
              <WordsText words={taken.at(-1)?.words ?? []} />:{' '}
              <WordsText words={taken.at(-1)?.reads ?? []} />
            </span>
          )}
        </p>
      </fieldset>
      <fieldset class="choice retrieval-options" aria-describedby={`${id}-fault-answer`}>
        <legend>{words.whatIsIt}</legend>
        {options.map((option) => (
          <label key={option.id} class="choice-option">
            <input
              type="radio"
              name={`${id}-case`}
              checked={given.includes(option.id)}
              onChange={() => named(option.id)}
            />
            <span>
              <WordsText words={option.words} />
            </span>
          </label>
        ))}
      </fieldset>
    </div>
  );
}
