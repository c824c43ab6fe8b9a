import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { DiagnosisReading } from '../../log/readings.ts';
import { dateOf } from '../../ui/dates.ts';
import { words } from './result-words.en.ts';
import type { NamedJob } from './to-job.ts';

const { job: said } = words;
const load = () => import('./to-job.ts');

interface Put {
  readonly id: string;
  readonly label: string;
  /** What was chosen for it: a job, or "" for a new one. */
  readonly into: string;
}

/** The label of a new job: two of one name could not be told apart in the list. */
function freshLabel(taken: readonly string[]): string {
  const label = said.label(dateOf(Date.now()));
  let fresh = label;
  for (let count = 2; taken.includes(fresh); count += 1)
    fresh = said.another({ label, count: String(count) });
  return fresh;
}

/** Puts the readings of a log into a job sheet, a new one or one of this device: once, and into one more new one on purpose. */
export function IntoJob({ readings }: { readonly readings: readonly DiagnosisReading[] }) {
  const jobs = useSignal<readonly NamedJob[]>([]);
  const into = useSignal('');
  const put = useSignal<readonly Put[]>([]);
  const state = useSignal<'' | 'putting' | 'done' | 'already' | 'failed'>('');
  useEffect(() => {
    load()
      .then(({ standingJobs }) => standingJobs())
      .then(
        (standing) => (jobs.value = standing),
        () => undefined,
      );
  }, []);
  const there = put.value.findLast((one) => one.into === into.value);
  const add = async (): Promise<void> => {
    if (state.value === 'putting') return;
    state.value = 'putting';
    const chosen = into.value;
    try {
      const there = jobs.value.find(({ job }) => job.id === chosen);
      const taken = [...jobs.value.map(({ name }) => name), ...put.value.map((one) => one.label)];
      const label = there?.name ?? freshLabel(taken);
      const { status, id } = await (await load()).putIntoJob(there?.job ?? label, readings);
      if (status === 'ok') put.value = [...put.value, { id, label, into: chosen }];
      state.value = status === 'ok' ? 'done' : 'failed';
    } catch {
      state.value = 'failed';
    }
  };
  return (
    <div class="log-into no-print">
      <div class="choice choice-select">
        <label for="log-job">{said.which}</label>
        <select
          id="log-job"
          value={into.value}
          onChange={(event) => {
            into.value = event.currentTarget.value;
            state.value = '';
          }}
        >
          <option value="">{said.fresh}</option>
          {jobs.value.map(({ job, name }) => (
            <option key={job.id} value={job.id}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <button
        type="button"
        onClick={() => {
          if (there === undefined) void add();
          else state.value = 'already';
        }}
      >
        {said.put}
      </button>
      <p role="status">
        {state.value === 'failed' && said.failed}
        {there && state.value !== 'failed' && state.value !== 'putting' && (
          <>
            {state.value === 'done'
              ? said.done(String(readings.length))
              : said.already(there.label)}{' '}
            <a href={`/measure/jobs/#${there.id}`}>{said.open(there.label)}</a>
          </>
        )}
      </p>
      {there?.into === '' && (
        <button type="button" class="quiet" onClick={() => void add()}>
          {said.onceMore}
        </button>
      )}
    </div>
  );
}
