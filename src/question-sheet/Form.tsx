import { useRef } from 'preact/hooks';
import { FEWEST, MOST } from '../quiz/on-paper/sheets.ts';
import { lessonsOf, questionsIn, type Field } from './choice.ts';
import { Lessons } from './Lessons.tsx';
import type { SheetModel } from './model.ts';
import { TextField } from './TextField.tsx';
import { words } from './words.en.ts';

const ORDER: readonly Field[] = ['lessons', 'count', 'seed', 'version'];
const SYSTEMS = ['us', 'si'] as const;

export function Form({ model }: { readonly model: SheetModel }) {
  const form = useRef<HTMLFormElement>(null);
  const typed = model.typed.value;
  const faults = model.faults.value;
  const lessons = lessonsOf(model.areas);
  const every = lessons.map(({ id }) => id);
  const ticked = lessons.filter(({ id }) => typed.lessons.has(id));

  async function submit(event: Event): Promise<void> {
    event.preventDefault();
    if (await model.make()) return;
    const first = ORDER.find((field) => model.faults.peek()[field] !== undefined);
    if (first !== undefined)
      form.current?.querySelector<HTMLElement>(`[data-field="${first}"]`)?.focus();
  }

  return (
    <form
      ref={form}
      class="sheet-form no-print"
      onSubmit={(event) => void submit(event)}
      noValidate
    >
      <h2>{words.lessons.label}</h2>
      {model.gone.length > 0 && <p class="field-error">{words.gone({ lessons: model.gone })}</p>}
      <div class="sheet-row">
        <button type="button" class="quiet" onClick={() => model.tick(every, true)}>
          {words.lessons.every}
        </button>
        <button type="button" class="quiet" onClick={() => model.tick(every, false)}>
          {words.lessons.none}
        </button>
      </div>
      <p class="field-error" id="sheet-lessons-fault" role="alert">
        {faults.lessons}
      </p>
      {model.areas.map((area, place) => (
        <Lessons key={area.id} model={model} area={area} first={place === 0} />
      ))}
      <p class="muted" role="status">
        {words.lessons.ticked({
          lessons: String(ticked.length),
          count: String(questionsIn(ticked)),
        })}
      </p>
      <TextField
        field="count"
        value={typed.count}
        fault={faults.count}
        label={words.count.label}
        hint={words.count.hint({ least: String(FEWEST), most: String(MOST) })}
        onInput={(count) => model.set({ count })}
        numeric
      />
      <fieldset class="choice">
        <legend>{words.units.label}</legend>
        <div class="choice-options">
          {SYSTEMS.map((system) => (
            <label key={system} class="choice-option">
              <input
                type="radio"
                name="sheet-units"
                checked={typed.units === system}
                onChange={() => model.set({ units: system })}
              />
              <span>{words.units[system]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <TextField
        field="seed"
        value={typed.seed}
        fault={faults.seed}
        label={words.seed.label}
        hint={words.seed.hint}
        onInput={(seed) => model.set({ seed })}
      >
        <button type="button" class="quiet" onClick={model.drawSeed}>
          {words.seed.draw}
        </button>
      </TextField>
      <TextField
        field="version"
        value={typed.version}
        fault={faults.version}
        label={words.version.label}
        hint={words.version.hint}
        onInput={(version) => model.set({ version })}
      />
      <div class="sheet-make">
        <button type="submit" class="act">
          {words.make}
        </button>
      </div>
      <p role="status">{model.loading.value ? words.loading : ''}</p>
      {model.miss.value !== undefined && <p role="alert">{words.miss[model.miss.value]}</p>}
    </form>
  );
}
