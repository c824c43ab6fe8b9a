import type { Area } from './choice.ts';
import type { SheetModel } from './model.ts';
import { words } from './words.en.ts';

interface LessonsProps {
  readonly model: SheetModel;
  readonly area: Area;
  /** The area whose first box gets the focus when none is ticked. */
  readonly first: boolean;
}

export function Lessons({ model, area, first }: LessonsProps) {
  const { lessons } = model.typed.value;
  const ids = area.lessons.map(({ id }) => id);
  const ticked = ids.filter((id) => lessons.has(id)).length;
  return (
    <fieldset class="choice" aria-describedby="sheet-lessons-fault">
      <legend>{area.title}</legend>
      {ids.length > 1 && (
        <label class="choice-option sheet-all">
          <input
            type="checkbox"
            data-field={first ? 'lessons' : undefined}
            checked={ticked === ids.length}
            indeterminate={ticked > 0 && ticked < ids.length}
            onChange={(event) => model.tick(ids, event.currentTarget.checked)}
          />
          <span>{words.lessons.all}</span>
        </label>
      )}
      <div class="sheet-lessons">
        {area.lessons.map(({ id, title, questions }) => (
          <label key={id} class="choice-option">
            <input
              type="checkbox"
              checked={lessons.has(id)}
              onChange={(event) => model.tick([id], event.currentTarget.checked)}
            />
            <span>
              {title}
              <span class="choice-note">{words.lessons.count({ count: String(questions) })}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
