import { useRef } from 'preact/hooks';
import { ROUND_MINUTES } from '../storage/plan.ts';
import { printDay } from '../widgets/retrieval/read-day.ts';
import { questionsIn, type TodayModel } from './model.ts';
import { words } from './words.en.ts';

/** How long a round is, and when the exam is. */
export function Settings({ model }: { readonly model: TodayModel }) {
  if (!model.ready.value) return null;
  const { minutes } = model.plan.value;
  return (
    <div class="today-settings">
      <fieldset class="choice">
        <legend>{words.minutes.label}</legend>
        <div class="choice-options">
          {ROUND_MINUTES.map((one) => (
            <label key={one} class="choice-option">
              <input
                type="radio"
                name="today-minutes"
                checked={minutes === one}
                onChange={() => model.setMinutes(one)}
              />
              <span>
                {words.minutes.of({ minutes: String(one), questions: String(questionsIn(one)) })}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      <Exam model={model} />
    </div>
  );
}

function Exam({ model }: { readonly model: TodayModel }) {
  const field = useRef<HTMLInputElement>(null);
  const { exam } = model.plan.value;
  const fault = model.examFault.value;
  const today = model.day.value;

  function submit(event: Event): void {
    event.preventDefault();
    if (!model.setExam(field.current?.value ?? '')) field.current?.focus();
  }
  function clear(): void {
    if (field.current !== null) field.current.value = '';
    model.clearExam();
    field.current?.focus();
  }

  return (
    <form class="today-exam" onSubmit={submit} noValidate>
      <label for="today-exam">{words.exam.label}</label>
      <p class="muted" id="today-exam-hint">
        {words.exam.hint}
      </p>
      <div class="retrieval-row">
        <span class="retrieval-field">
          <input
            ref={field}
            id="today-exam"
            type="date"
            min={printDay(today + 1)}
            defaultValue={exam ?? ''}
            aria-invalid={fault === undefined ? undefined : 'true'}
            aria-describedby="today-exam-hint today-exam-fault"
          />
        </span>
        <button type="submit" class="quiet">
          {words.exam.set}
        </button>
        {exam !== null && (
          <button type="button" class="quiet" onClick={clear}>
            {words.exam.clear}
          </button>
        )}
      </div>
      <p class="field-error" id="today-exam-fault" role="alert">
        {fault && words.exam[fault]}
      </p>
      <p role="status">{ahead(model)}</p>
      {model.planNotKept.value && <p class="muted">{words.exam.kept}</p>}
    </form>
  );
}

function ahead(model: TodayModel): string {
  const exam = model.exam.value;
  if (exam === undefined) return '';
  const days = exam - model.day.value;
  if (days <= 0) return words.exam.over;
  const { fresh, freshToday } = model.waits.value;
  const left = { days: String(days), fresh: String(fresh.length), each: String(freshToday) };
  if (fresh.length === 0) return words.exam.aheadAll(left);
  // Half of a round at most is new.
  const short = 2 * freshToday > questionsIn(model.plan.value.minutes);
  return short ? `${words.exam.ahead(left)} ${words.tooShort}` : words.exam.ahead(left);
}
