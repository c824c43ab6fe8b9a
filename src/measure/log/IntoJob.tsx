import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { DiagnosisReading } from '../../log/readings.ts';
import { dateOf } from '../../ui/dates.ts';
import { words } from './result-words.en.ts';
import type { Standing } from './to-job.ts';

const { job: said } = words;
const load = () => import('./to-job.ts');

/** The label of a new job: two of one name could not be told apart in the list. */
function freshLabel(taken: readonly string[]): string {
  const label = said.label(dateOf(Date.now()));
  let fresh = label;
  for (let count = 2; taken.includes(fresh); count += 1)
    fresh = said.another({ label, count: String(count) });
  return fresh;
}

/** Of several jobs that hold as much of the log the latest. */
const fuller = (one: Standing, other: Standing): number =>
  other.here - one.here || other.job.created - one.job.created;

/**
 * Puts the readings of a log into a job sheet, a new one or one of this device: once, and into one more new one on purpose. What
 * stands there already is looked up in the jobs themselves, so a reload or another tab forgets nothing.
 */
export function IntoJob({ readings }: { readonly readings: readonly DiagnosisReading[] }) {
  const jobs = useSignal<readonly Standing[]>([]);
  const into = useSignal('');
  /** How many were added last, and how many of them stood there before. */
  const done = useSignal({ added: 0, before: 0 });
  const state = useSignal<'' | 'putting' | 'done' | 'again' | 'failed'>('');
  const look = async (): Promise<void> => {
    jobs.value = await (await load()).standingJobs(readings);
  };
  useEffect(() => {
    look().catch(() => undefined);
  }, []);
  const all = readings.length;
  const chosen = (): Standing | undefined => jobs.value.find(({ job }) => job.id === into.value);
  /** Where they stand already: in the job that is chosen, and for a new one in any. */
  const there = (): Standing | undefined =>
    [...jobs.value]
      .filter(({ job, here }) => here > 0 && [job.id, ''].includes(into.value))
      .sort(fuller)[0];
  const add = async (old?: Standing): Promise<void> => {
    const { putIntoJob } = await load();
    const label = freshLabel(jobs.value.map(({ name }) => name));
    const status = await putIntoJob(old?.job ?? label, readings);
    if (status === 'ok') {
      done.value = { added: all - (old?.here ?? 0), before: old?.here ?? 0 };
      await look();
    }
    state.value = status === 'ok' ? 'done' : 'failed';
  };
  const alone = async (work: () => Promise<void>): Promise<void> => {
    if (state.value === 'putting') return;
    state.value = 'putting';
    try {
      await work();
    } catch {
      state.value = 'failed';
    }
  };
  const put = async (): Promise<void> => {
    await look();
    const job = chosen();
    // Deleted meanwhile it is no choice any more.
    if (job === undefined) into.value = '';
    const holder = there();
    if (holder !== undefined && (job === undefined || holder.here === all)) state.value = 'again';
    else await add(job);
  };
  const putOnceMore = async (): Promise<void> => {
    await look();
    await add();
  };
  const holder = there();
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
      <button type="button" onClick={() => void alone(put)}>
        {said.put}
      </button>
      <p role="status">
        {state.value === 'failed' && said.failed}
        {holder && state.value !== 'failed' && state.value !== 'putting' && (
          <>
            {state.value === 'done'
              ? doneWords(done.value)
              : thereWords(holder, all, state.value === 'again')}{' '}
            <a href={`/measure/jobs/#${holder.job.id}`}>{said.open(holder.name)}</a>
          </>
        )}
      </p>
      {holder && into.value === '' && (
        <button type="button" class="quiet" onClick={() => void alone(putOnceMore)}>
          {said.onceMore}
        </button>
      )}
    </div>
  );
}

const doneWords = ({ added, before }: { readonly added: number; readonly before: number }) =>
  before === 0
    ? said.done(String(added))
    : said.added({ added: String(added), before: String(before) });

function thereWords({ name: label, here }: Standing, all: number, again: boolean): string {
  if (here === all) return again ? said.nothingTwice(label) : said.already(label);
  const some = said.some({ here: String(here), of: String(all), label });
  return again ? `${some} ${said.theRest}` : some;
}
