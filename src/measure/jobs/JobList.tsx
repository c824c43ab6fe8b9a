import { useRef } from 'preact/hooks';
import { changedAt, readingsOf, type Job } from '../../storage/jobs/job.ts';
import { dateAndTimeOf } from '../../ui/dates.ts';
import { labelOf } from './label-of.ts';
import type { JobsModel } from './model.ts';
import { Fresh } from '../../ui/kept/Fresh.tsx';
import { KeptFiles } from '../../ui/kept/KeptFiles.tsx';
import { Undo } from '../../ui/kept/Undo.tsx';
import { words as kept } from '../../ui/kept/words.en.ts';
import { words } from './words.en.ts';

export const JOB_LIST_TITLE = 'job-list-title';

/** To the field of a new job, with all of its form. */
function toFresh(): void {
  const field = document.getElementById('job-new');
  field?.focus({ preventScroll: true });
  field?.closest('form')?.scrollIntoView({ block: 'start' });
}

interface ListProps {
  readonly jobs: JobsModel;
  readonly open: (job: Job) => void;
}

/** The jobs that there are, a new one, and the way to a file and back. */
export function JobList({ jobs, open }: ListProps) {
  const any = jobs.count.value > 0 || jobs.gone.value.length > 0;
  return (
    <>
      {any && <Listed jobs={jobs} open={open} />}
      <Fresh
        id="job"
        most={80}
        said={{
          fresh: words.fresh,
          label: words.label,
          how: words.labelHow,
          missing: words.labelMissing,
          start: words.open,
        }}
        start={(label) => open(jobs.add(label))}
      />
      {!any && <p class="muted">{jobs.loaded.value ? words.none : words.loading}</p>}
      <Files jobs={jobs} />
    </>
  );
}

function Files({ jobs }: { readonly jobs: JobsModel }) {
  const missing = useRef(0);
  const kept = {
    ...jobs,
    file: async () => {
      const file = await jobs.file();
      missing.current = file.missing;
      return file.text;
    },
  };
  const also = ({ sheets }: Awaited<ReturnType<JobsModel['take']>>): readonly string[] =>
    sheets === undefined
      ? []
      : [
          ...(sheets.added > 0 ? [words.sheets.added(String(sheets.added))] : []),
          ...sheets.sameName.map((name) => words.sheets.sameName(name)),
          ...(sheets.damaged > 0 ? [words.sheets.damaged(String(sheets.damaged))] : []),
          ...(sheets.unkept ? [words.sheets.unkept] : []),
        ];
  const lacks = () => (missing.current > 0 ? words.sheets.missing(String(missing.current)) : '');
  return <KeptFiles id="job" kept={kept} said={{ ...words, also, lacks }} />;
}

function Listed({ jobs, open }: ListProps) {
  const listed = jobs.listed.value;
  const all = jobs.count.value;
  const query = jobs.query.value;
  return (
    <section class="kept-listed" aria-labelledby={JOB_LIST_TITLE}>
      <div class="kept-head">
        <h2 id={JOB_LIST_TITLE} tabIndex={-1}>
          {words.title}
        </h2>
        <button type="button" class="act" onClick={toFresh}>
          {words.fresh}
        </button>
      </div>
      <Undo
        gone={jobs.gone.value}
        nameOf={labelOf}
        bringBack={jobs.bringBack}
        heading={JOB_LIST_TITLE}
      />
      {(all > 1 || query !== '') && (
        <p class="job-search">
          <label for="job-search">{words.search}</label>
          <input
            id="job-search"
            type="search"
            autoComplete="off"
            value={query}
            onInput={(event) => (jobs.query.value = event.currentTarget.value)}
          />
          <span role="status" class="muted">
            {query !== '' && words.found({ shown: String(listed.length), all: String(all) })}
          </span>
        </p>
      )}
      {all === 0 ? (
        <p class="muted">{words.none}</p>
      ) : listed.length === 0 ? (
        <p>{words.noneFound({ query })}</p>
      ) : (
        <ul>
          {listed.map((job) => (
            <li key={job.id}>
              <a
                href={`#${job.id}`}
                onClick={(event) => {
                  event.preventDefault();
                  open(job);
                }}
              >
                {labelOf(job)}
              </a>
              <span class="muted">
                {words.readings(String(readingsOf(job).length))},{' '}
                {words.changed(dateAndTimeOf(changedAt(job)))}
              </span>
              <button
                type="button"
                class="quiet"
                aria-label={kept.remove(labelOf(job))}
                onClick={() => {
                  jobs.remove(job);
                  document.getElementById(JOB_LIST_TITLE)?.focus();
                }}
              >
                {kept.removeShort}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
