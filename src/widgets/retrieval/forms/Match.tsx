import type { AskedMatch } from '../../../quiz/asked.ts';
import type { FormProps } from '../form-props.ts';
import { WordsText } from '../WordsText.tsx';
import { letterOf } from '../../../quiz/letter-of.ts';
import { words } from './words.en.ts';

/** Lines, each to find its partner in a lettered list. */
export function Match({ model, asked, id }: FormProps<AskedMatch>) {
  const given = new Map(model.ticked.value.map((pair) => pair.split(':') as [string, string]));
  const { pairs, partners } = asked;
  const choose = (pair: string, partner: string): void =>
    model.give(Array.from(given.set(pair, partner), ([left, right]) => `${left}:${right}`));

  return (
    <div class="form-match">
      <p>{words.match}</p>
      <ol class="form-partners">
        {partners.map((partner, place) => (
          <li key={partner.id}>
            <span id={`${id}-letter-${place}`} class="form-place">
              {letterOf(place)}
            </span>
            <span id={`${id}-partner-${place}`}>
              <WordsText words={partner.words} />
            </span>
          </li>
        ))}
      </ol>
      <div class="form-lines">
        {pairs.map((pair) => {
          const chosen = given.get(pair.id);
          return (
            <fieldset key={pair.id} class="choice" aria-describedby={`${id}-fault-answer`}>
              <legend>
                <WordsText words={pair.words} />
              </legend>
              <div class="form-letters">
                {partners.map((partner, place) => (
                  <label key={partner.id} class="choice-option">
                    <input
                      type="radio"
                      name={`${id}-pair-${pair.id}`}
                      aria-labelledby={`${id}-letter-${place} ${id}-partner-${place}`}
                      checked={chosen === partner.id}
                      onChange={() => choose(pair.id, partner.id)}
                    />
                    <span aria-hidden="true">{letterOf(place)}</span>
                  </label>
                ))}
              </div>
            </fieldset>
          );
        })}
      </div>
    </div>
  );
}
