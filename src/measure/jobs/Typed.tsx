import type { TextOf } from '../../storage/jobs/job.ts';
import type { JobsModel } from './model.ts';
import type { Sheet } from './sheet.ts';

interface TypedProps {
  readonly jobs: JobsModel;
  readonly sheet: Sheet;
  readonly entry: TextOf;
  readonly label: string;
  readonly how?: string;
  readonly long?: boolean;
}

/** A text of the job; each key is kept. */
export function Typed({ jobs, sheet, entry, label, how, long = false }: TypedProps) {
  const job = sheet.job.value;
  if (job === undefined) return null;
  const id = `job-${entry}`;
  const common = {
    id,
    autoComplete: 'off',
    value: job[entry].value,
    ...(how !== undefined && { 'aria-describedby': `${id}-how` }),
  };
  const write = (text: string) => jobs.write(job, entry, text);
  return (
    <p class="job-typed">
      <label for={id}>{label}</label>
      {long ? (
        <textarea
          {...common}
          rows={4}
          maxLength={10_000}
          onInput={(event) => write(event.currentTarget.value)}
        />
      ) : (
        <input
          {...common}
          type="text"
          maxLength={80}
          onInput={(event) => write(event.currentTarget.value)}
        />
      )}
      {how !== undefined && (
        <span id={`${id}-how`} class="muted">
          {how}
        </span>
      )}
    </p>
  );
}
