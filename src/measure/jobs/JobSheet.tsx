import { useEffect, useMemo } from 'preact/hooks';
import { Form } from '../../planner/Form.tsx';
import { Assumed } from '../../planner/FromYours.tsx';
import { Frosty } from '../../planner/Frosty.tsx';
import type * as ownSheet from '../../own-sheet/OnTransmission.tsx';
import type * as load from '../../planner/load.ts';
import { think } from '../../planner/thinker.ts';
import { words as plannerWords } from '../../planner/words.en.ts';
import { FootBar } from '../../ui/FootBar.tsx';
import { LiveText } from '../../ui/LiveText.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { labelOf } from './label-of.ts';
import type { JobsModel } from './model.ts';
import { Open } from './Open.tsx';
import { OnPaper } from './OnPaper.tsx';
import { Readings } from './Readings.tsx';
import { proofWords, Repair, REPAIR_TITLE, unjudgedWords } from './Repair.tsx';
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
  /** Opened by hand a moment ago: its first open field takes the keys. */
  readonly arrived: boolean;
  readonly close: () => void;
}

const RESULT = 'job-result';

/** A job begins with its complaint, and goes on with its readings. */
const isBegun = ({ job, readings }: Sheet): boolean =>
  job.peek()?.complaint.value !== '' || readings.peek().length > 0;

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
    if (arrived)
      document.getElementById(isBegun(sheet) ? 'next-test-test' : 'job-complaint')?.focus();
    return sheet.stop;
  }, []);
  const job = sheet.job.value;
  if (job === undefined) return null;
  const said = planner?.answers;
  const judged = sheet.planner.lost.value ? undefined : said;
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
        <div class="job-about">
          <Typed
            jobs={jobs}
            sheet={sheet}
            entry="complaint"
            label={words.complaint.label}
            how={words.complaint.how}
            rows={2}
          />
          {own !== null && planner !== null && (
            <own.OnTransmission
              model={sheet.planner}
              which={sheet.which}
              choose={sheet.choose}
              training={planner.table}
            />
          )}
        </div>
        <div class="next-test job-work">
          <div>
            {said && <said.Clashes model={sheet.planner} />}
            <Form
              model={sheet.planner}
              add={(reading, typed) => {
                sheet.add(reading, system, typed);
                const test = document.getElementById('next-test-test');
                test?.focus({ preventScroll: true });
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
            {judged && <Bar sheet={sheet} said={judged} />}
          </div>
          {/* Beside the form where there is room, and after it where there is none. */}
          <section id={RESULT} class="job-result" aria-label={words.result.title} tabIndex={0}>
            {judged ? (
              <>
                <Now sheet={sheet} said={judged} />
                {sheet.planner.advice.value === null && <p role="status">{unjudgedWords(sheet)}</p>}
                <judged.Causes model={sheet.planner} />
                <judged.Next model={sheet.planner} />
                <Open sheet={sheet} />
                <judged.Leak model={sheet.planner} />
              </>
            ) : (
              <p role="status">{plannerWords.failed}</p>
            )}
            {sheet.planner.tableIs.value !== 'gone' && <Assumed model={sheet.planner} />}
          </section>
          <Readings sheet={sheet} />
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
            rows={4}
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

interface SaidProps {
  readonly sheet: Sheet;
  readonly said: typeof load.answers;
}

/** What the readings come to: the list, and once it is repaired the proof. */
function Now({ sheet, said }: SaidProps) {
  const system = useUnits();
  if (sheet.after.value.length === 0) return <said.Now model={sheet.planner} />;
  return <LiveText visible text={proofWords(sheet, system)} />;
}

/** The same in short on a narrow screen, under the form, and the way to all of it. */
function Bar({ sheet, said }: SaidProps) {
  const system = useUnits();
  const repaired = sheet.after.value.length > 0;
  const lines = repaired ? [proofWords(sheet, system)] : said.inShort(sheet.planner, system);
  if (lines.length === 0) return null;
  const all = () => {
    const part = document.getElementById(repaired ? REPAIR_TITLE : RESULT);
    part?.focus({ preventScroll: true });
    part?.scrollIntoView({ block: 'start' });
  };
  return (
    <FootBar class="job-bar" label={words.result.short}>
      <button type="button" onClick={all}>
        <span class="job-bar-says">
          {lines.map((line) => (
            <span key={line}>{line}</span>
          ))}
        </span>{' '}
        <span class="job-bar-all">{words.result.all}</span>
      </button>
    </FootBar>
  );
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
