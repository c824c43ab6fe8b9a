import { plainClash, type Name } from '../../diagnosis/index.ts';
import { share } from '../../planner/Lists.tsx';
import { PutBack, READINGS_TITLE, toReadings } from '../../planner/PutBack.tsx';
import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { words as plannerWords } from '../../planner/words.en.ts';
import { format } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { byDay } from './days.ts';
import type { Sheet, SheetReading } from './sheet.ts';
import { words } from './sheet-words.en.ts';
import { stepWords } from './step-words.ts';
import { typedIn } from './typed-in.ts';

/** A reading as one line: its test, what it showed, and how warm the fluid was. */
export function lineOf({ taken, test, typed }: SheetReading, system: UnitSystem): string {
  if (taken === null) return `${test}: ${typed}`;
  const { temperatureC } = taken;
  const at =
    temperatureC === undefined
      ? ''
      : ` ${words.readings.at(format(temperatureC, temperature, system))}`;
  return plannerWords.readings.did({
    test: nameOf(taken.test, system),
    value: `${shownIn(taken, system)}${at}`,
  });
}

/** The readings of the job, with what each did to the list and where two contradict each other. */
export function Readings({ sheet }: { readonly sheet: Sheet }) {
  const { readings, form } = words;
  const system = useUnits();
  const all = sheet.readings.value;
  const gone = sheet.gone.value;
  const parts = [
    [form.before, all.filter(({ phase }) => phase === 'before')],
    [form.after, all.filter(({ phase }) => phase === 'after')],
  ] as const;
  const both = parts.every(([, some]) => some.length > 0);
  return (
    <section class="next-readings" aria-label={readings.title}>
      <h3 id={READINGS_TITLE} tabIndex={-1}>
        {readings.title}
      </h3>
      <PutBack
        said={
          gone === null ? '' : plannerWords.readings.takenOut({ reading: lineOf(gone, system) })
        }
        putBack={sheet.putBack}
      />
      {all.length === 0 && <p class="muted">{readings.none}</p>}
      {parts.map(
        ([title, some]) =>
          some.length > 0 && (
            <div key={title}>
              {(both || title === form.after) && <h4>{title}</h4>}
              {byDay(some).map(({ day, from, some: ofDay }) => (
                <div key={from}>
                  {day !== '' && <p class="job-day">{readings.day(day)}</p>}
                  <ol start={from + 1}>
                    {ofDay.map((one) => (
                      <One key={one.id} sheet={sheet} reading={one} />
                    ))}
                  </ol>
                </div>
              ))}
            </div>
          ),
      )}
      {all.length > 0 && (
        <p class="muted">
          {readings.minutes(String(Math.round(sheet.planner.stands.value.minutes)))}
        </p>
      )}
    </section>
  );
}

function One({ sheet, reading }: { readonly sheet: Sheet; readonly reading: SheetReading }) {
  const system = useUnits();
  const { readings } = words;
  const { taken, id, units, phase } = reading;
  const typed = typedIn(reading);
  const name = taken === null ? reading.test : nameOf(taken.test, system);
  const did = phase === 'before' && taken !== null ? stepOf(sheet, id, system) : '';
  return (
    <li>
      <p>
        {lineOf(reading, system)}
        {typed !== '' && units !== system && (
          <span class="muted"> ({readings.asTyped(typed)})</span>
        )}
      </p>
      {taken === null && <p class="field-error">{readings.unknown(reading.test)}</p>}
      {sheet.clashes.value
        .filter((ids) => ids.includes(id))
        .map((ids) => {
          const other = sheet.readings.value.find((one) => one.id !== id && ids.includes(one.id));
          if (!other?.taken) return null;
          return (
            <p key={other.id} class="field-error">
              {words.clash[(taken && plainClash(taken, other.taken)) ?? 'known']({
                other: nameOf(other.taken.test, system),
                value: shownIn(other.taken, system),
              })}
            </p>
          );
        })}
      {did !== '' && <p class="muted">{did}</p>}
      <p class="job-acts">
        <button
          type="button"
          class="quiet"
          aria-label={readings.which({ test: name, action: readings.change })}
          onClick={() => sheet.edit(reading, system)}
        >
          {readings.change}
        </button>
        <button
          type="button"
          class="quiet"
          aria-label={readings.which({ test: name, action: readings.remove })}
          onClick={() => {
            sheet.remove(reading);
            toReadings();
          }}
        >
          {readings.remove}
        </button>
      </p>
    </li>
  );
}

function stepOf(sheet: Sheet, id: string, system: UnitSystem): string {
  const step = sheet.steps.value.get(id);
  if (step === undefined) return '';
  return stepWords(...step, {
    fault: (name: Name) => plannerWords.faults[name],
    share: (part) => share(part, system),
  });
}
