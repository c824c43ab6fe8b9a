import type { RefObject } from 'preact';
import { useState } from 'preact/hooks';
import { CopyLink } from '../ui/CopyLink.tsx';
import { SHOWN } from './address.ts';
import { Key } from './Key.tsx';
import type { Made as MadeSheets, SheetModel } from './model.ts';
import { Paper } from './Paper.tsx';
import { words } from './words.en.ts';

const { made: said } = words;

interface MadeProps {
  readonly model: SheetModel;
  readonly made: MadeSheets;
  readonly head: RefObject<HTMLHeadingElement>;
}

/** One sheet or the key at a time, and what shows is what prints. */
export function Made({ model, made, head }: MadeProps) {
  const shown = model.shown.value;
  const [wrongToo, setWrongToo] = useState(false);
  const { choice, version } = made;
  return (
    <section aria-labelledby="sheet-made">
      <div class="sheet-chosen no-print">
        <h2 id="sheet-made" ref={head} tabIndex={-1}>
          {said.title}
        </h2>
        <p>{said.about({ count: String(choice.count), seed: choice.seed })}</p>
        {choice.version !== '' && choice.version !== version && (
          <p class="field-error" role="alert">
            {said.otherVersion({ then: choice.version, now: version })}
          </p>
        )}
        <fieldset class="choice">
          <legend>{said.which}</legend>
          <div class="choice-options">
            {SHOWN.map((one) => (
              <label key={one} class="choice-option">
                <input
                  type="radio"
                  name="sheet-shown"
                  checked={shown === one}
                  onChange={() => model.show(one)}
                />
                <span>
                  {said.shown[one]}
                  <span class="choice-note">{said.notes[one]}</span>
                </span>
              </label>
            ))}
          </div>
        </fieldset>
        {shown === 'key' && (
          <label class="toggle">
            <input
              type="checkbox"
              checked={wrongToo}
              onChange={(event) => setWrongToo(event.currentTarget.checked)}
            />
            {said.wrongToo}
          </label>
        )}
        <div class="sheet-row">
          <button type="button" class="act" onClick={() => print()}>
            {said.print}
          </button>
          <CopyLink id="sheet" search={() => model.link(made)} />
        </div>
      </div>
      {shown === 'key' ? (
        <Key made={made} wrongToo={wrongToo} />
      ) : (
        <Paper made={made} sheet={shown} />
      )}
    </section>
  );
}
