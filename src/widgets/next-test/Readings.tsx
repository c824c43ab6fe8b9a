import type { TakenReading } from '../../diagnosis/index.ts';
import { PutBack, READINGS_TITLE, toReadings } from '../../planner/PutBack.tsx';
import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { words } from '../../planner/words.en.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { NextTestModel } from './model.ts';

/** The readings so far, each to be taken out again. */
export function Readings({ model }: { readonly model: NextTestModel }) {
  const system = useUnits();
  const { readings } = words;
  const taken = model.readings.value;
  const gone = model.gone.value;
  // There no test stands below.
  const held = ['noTable', 'making', 'faulty', 'gone'].includes(model.tableIs.value);
  const lineOf = (one: TakenReading): string =>
    readings.did({ test: nameOf(one.test, system), value: shownIn(one, system) });
  return (
    <section class="next-readings" aria-label={readings.title}>
      <h3 id={READINGS_TITLE} tabIndex={-1}>
        {readings.title}
      </h3>
      <PutBack
        said={
          gone === null
            ? ''
            : gone.one === null
              ? readings.allOut
              : readings.takenOut({ reading: lineOf(gone.one) })
        }
        putBack={model.putBack}
      />
      {taken.length === 0 ? (
        <p class="muted">
          {readings.none} {!held && readings.takeFirst}
        </p>
      ) : (
        <>
          <ol>
            {taken.map((one, i) => (
              <li key={i}>
                <span>{lineOf(one)}</span>
                <button
                  type="button"
                  class="quiet"
                  onClick={() => {
                    model.remove(i);
                    toReadings();
                  }}
                >
                  {readings.remove}
                </button>
              </li>
            ))}
          </ol>
          <p class="muted">
            {readings.minutes({ minutes: String(Math.round(model.stands.value.minutes)) })}{' '}
            <button
              type="button"
              class="quiet"
              onClick={() => {
                model.clear();
                toReadings();
              }}
            >
              {readings.again}
            </button>
          </p>
        </>
      )}
    </section>
  );
}
