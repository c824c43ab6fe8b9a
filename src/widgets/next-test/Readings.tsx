import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { words } from '../../planner/words.en.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { NextTestModel } from './model.ts';

/** The readings so far, each to be taken out again. */
export function Readings({ model }: { readonly model: NextTestModel }) {
  const system = useUnits();
  const { readings } = words;
  const taken = model.readings.value;
  return (
    <section class="next-readings" aria-label={readings.title}>
      <h3>{readings.title}</h3>
      {taken.length === 0 ? (
        <p class="muted">{readings.none}</p>
      ) : (
        <>
          <ol>
            {taken.map((one, i) => (
              <li key={i}>
                <span>
                  {readings.did({ test: nameOf(one.test, system), value: shownIn(one, system) })}
                </span>
                <button type="button" class="quiet" onClick={() => model.remove(i)}>
                  {readings.remove}
                </button>
              </li>
            ))}
          </ol>
          <p class="muted">
            {readings.minutes({ minutes: String(Math.round(model.stands.value.minutes)) })}{' '}
            <button type="button" class="quiet" onClick={model.clear}>
              {readings.again}
            </button>
          </p>
        </>
      )}
    </section>
  );
}
