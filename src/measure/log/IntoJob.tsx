import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { DiagnosisReading } from '../../log/readings.ts';
import type { Job } from '../../storage/jobs/job.ts';
import { dateOf } from '../../ui/dates.ts';
import { words } from './result-words.en.ts';

const { job: said } = words;
const load = () => import('./to-job.ts');

/** Puts the readings of a log into a job sheet: a new one, or one of this device. */
export function IntoJob({ readings }: { readonly readings: readonly DiagnosisReading[] }) {
  const jobs = useSignal<readonly Job[]>([]);
  const into = useSignal('');
  const done = useSignal<{ readonly id: string; readonly label: string } | null>(null);
  const failed = useSignal(false);
  useEffect(() => {
    load()
      .then(({ standingJobs }) => standingJobs())
      .then(
        (standing) => (jobs.value = standing),
        () => undefined,
      );
  }, []);
  const put = async (): Promise<void> => {
    failed.value = false;
    done.value = null;
    try {
      const job = jobs.value.find(({ id }) => id === into.value);
      const label = job?.label.value ?? said.label(dateOf(Date.now()));
      const { status, id } = await (await load()).putIntoJob(job ?? label, readings);
      if (status === 'ok') done.value = { id, label };
      else failed.value = true;
    } catch {
      failed.value = true;
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
            done.value = null;
          }}
        >
          <option value="">{said.fresh}</option>
          {jobs.value.map(({ id, label }) => (
            <option key={id} value={id}>
              {label.value}
            </option>
          ))}
        </select>
      </div>
      <button type="button" onClick={() => void put()}>
        {said.put}
      </button>
      <p role="status">
        {failed.value && said.failed}
        {done.value && (
          <>
            {said.done(String(readings.length))}{' '}
            <a href={`/measure/jobs/#${done.value.id}`}>{said.open(done.value.label)}</a>
          </>
        )}
      </p>
    </div>
  );
}
