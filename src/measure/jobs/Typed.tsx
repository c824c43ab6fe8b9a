import { useSignal } from '@preact/signals';
import type { TextOf } from '../../storage/jobs/job.ts';
import type { JobsModel } from './model.ts';
import type { Sheet } from './sheet.ts';

interface TypedProps {
  readonly jobs: JobsModel;
  readonly sheet: Sheet;
  readonly entry: TextOf;
  readonly label: string;
  readonly how?: string;
  /** Of a text of several lines. */
  readonly rows?: number;
  /** Said where nothing stands in the field; the text that is kept stays until there is another. */
  readonly blank?: string;
}

/** A text of the job; each key is kept. */
export function Typed({ jobs, sheet, entry, label, how, rows, blank }: TypedProps) {
  /** What stands in the field and is not kept. */
  const refused = useSignal<string | null>(null);
  const job = sheet.job.value;
  if (job === undefined) return null;
  const id = `job-${entry}`;
  const common = {
    id,
    autoComplete: 'off',
    value: refused.value ?? job[entry].value,
    ...(how !== undefined && { 'aria-describedby': `${id}-how` }),
    ...(blank !== undefined && {
      'aria-describedby': `${id}-wrong`,
      'aria-invalid': refused.value !== null,
    }),
  };
  const write = (text: string) => {
    refused.value = blank !== undefined && text.trim() === '' ? text : null;
    if (refused.peek() === null) jobs.write(job, entry, text);
  };
  return (
    <p class="job-typed">
      <label for={id}>{label}</label>
      {rows !== undefined ? (
        <textarea
          {...common}
          rows={rows}
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
      {blank !== undefined && (
        <span id={`${id}-wrong`} class="field-error" role="alert">
          {refused.value !== null && blank}
        </span>
      )}
    </p>
  );
}
