import { useEffect, useMemo } from 'preact/hooks';
import { Form } from '../../planner/Form.tsx';
import { Assumed } from '../../planner/FromYours.tsx';
import { Frosty } from '../../planner/Frosty.tsx';
import type * as ownSheet from '../../own-sheet/OnTransmission.tsx';
import type * as load from '../../planner/load.ts';
import { think } from '../../planner/thinker.ts';
import { words as plannerWords } from '../../planner/words.en.ts';
import { LiveText } from '../../ui/LiveText.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { labelOf } from './label-of.ts';
import type { JobsModel } from './model.ts';
import { Open } from './Open.tsx';
import { OnPaper } from './OnPaper.tsx';
import { Readings } from './Readings.tsx';
import { proofWords, Repair, unjudgedWords } from './Repair.tsx';
import { makeSheet, type Phase, type Sheet } from './sheet.ts';
import { words } from './sheet-words.en.ts';
import { Typed } from './Typed.tsx';

export interface JobProps {
  readonly jobs: JobsModel;
  readonly id: string;
  /** The planner and what shows its answers; null where it did not load. */
  readonly planner: Pick<typeof load, 'table' | 'answers'> | null;
  /** The choice of a transmission; null where it did not load. */
  readonly own: Pick<typeof ownSheet, 'OnTransmission'> | null;
  /** Opened by hand a moment ago: the form takes the keys. */
  readonly arrived: boolean;
  readonly close: () => void;
}

/** One job: readings in, what it may be and what to measure next, the repair and its proof, two pages for paper. */
export function JobSheet({ jobs, id, planner, own, arrived, close }: JobProps) {
  const sheet = useMemo(() => makeSheet(jobs, id, Date.now, think), []);
  const system = useUnits();
  useEffect(() => {
    // Where the choice did not load there is the training transmission alone, for the jobs that are on it.
    if (own === null && planner !== null && sheet.which.peek() === 'training')
      sheet.planner.table.value = planner.table;
  }, []);
  useEffect(() => {
    if (arrived) document.getElementById('next-test-test')?.focus({ preventScroll: true });
    return sheet.stop;
  }, []);
  const job = sheet.job.value;
  if (job === undefined) return null;
  const said = planner?.answers;
  const changing = sheet.changing.value !== '';
  const { form } = words;
  return (
    <>
      <div class="job no-print" data-busy data-ready={said !== undefined}>
        <p class="job-top">
          <button type="button" class="quiet" onClick={close}>
            {words.back}
          </button>
        </p>
        <h2>{labelOf(job)}</h2>
        <p class="muted">{words.kept}</p>
        {own !== null && planner !== null && (
          <own.OnTransmission
            model={sheet.planner}
            which={sheet.which}
            choose={sheet.choose}
            training={planner.table}
          />
        )}
        <div class="next-test">
          <div>
            {/* Above the form, whose first field takes the keys after each reading: there the eye is. */}
            {said && !sheet.planner.lost.value && <Now sheet={sheet} said={said} />}
            {said && <said.Clashes model={sheet.planner} />}
            <Form
              model={sheet.planner}
              add={(reading, typed) => {
                sheet.add(reading, system, typed);
                const test = document.getElementById('next-test-test');
                test?.focus({ preventScroll: true });
                // With what the reading came to, which stands above it.
                test?.scrollIntoView({ block: 'center' });
              }}
              title={changing ? form.change : form.title}
              {...(changing && { button: form.save })}
            >
              <When sheet={sheet} />
            </Form>
            {changing && (
              <button type="button" class="quiet" onClick={sheet.leaveAsItWas}>
                {form.leave}
              </button>
            )}
            <Frosty model={sheet.planner} />
          </div>
          <Readings sheet={sheet} />
          {said && !sheet.planner.lost.value ? (
            <>
              {sheet.planner.advice.value === null && <p role="status">{unjudgedWords(sheet)}</p>}
              <said.Causes model={sheet.planner} />
              <div>
                <said.Leak model={sheet.planner} />
                <Open sheet={sheet} />
              </div>
              <said.Next model={sheet.planner} />
            </>
          ) : (
            <p role="status">{plannerWords.failed}</p>
          )}
          {sheet.planner.tableIs.value !== 'gone' && <Assumed model={sheet.planner} />}
        </div>
        <Repair jobs={jobs} sheet={sheet} />
        <section class="job-part" aria-labelledby="job-notes-title">
          <h3 id="job-notes-title">{words.notes.title}</h3>
          <Typed
            jobs={jobs}
            sheet={sheet}
            entry="notes"
            label={words.notes.label}
            how={words.notes.how}
            long
          />
          <Typed
            jobs={jobs}
            sheet={sheet}
            entry="label"
            label={words.label}
            blank={words.labelEmpty(labelOf(job))}
          />
        </section>
      </div>
      <OnPaper sheet={sheet} />
    </>
  );
}

/** What the readings come to, where the hand is: the list, and once it is repaired the proof. */
function Now({ sheet, said }: { readonly sheet: Sheet; readonly said: typeof load.answers }) {
  const system = useUnits();
  if (sheet.after.value.length === 0) return <said.Now model={sheet.planner} />;
  return <LiveText visible text={proofWords(sheet, system)} />;
}

/** Whether a reading is of the car before or after the repair. */
function When({ sheet }: { readonly sheet: Sheet }) {
  const { when, before, after } = words.form;
  const options: readonly (readonly [Phase, string])[] = [
    ['before', before],
    ['after', after],
  ];
  return (
    <fieldset class="choice">
      <legend>{when}</legend>
      <div class="choice-options">
        {options.map(([phase, label]) => (
          <label key={phase} class="choice-option">
            <input
              type="radio"
              name="job-phase"
              checked={sheet.phase.value === phase}
              onChange={() => (sheet.phase.value = phase)}
            />
            <span class="choice-words">{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
