import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { ComponentType } from 'preact';
import { isDeleted } from '../../storage/jobs/job.ts';
import { jobStore } from '../../storage/jobs/job-store.ts';
import { leaveWord } from '../../storage/jobs/word-of-jobs.ts';
import { sheetStore } from '../../storage/sheets/sheet-store.ts';
import { useOpened } from '../../ui/kept/use-opened.ts';
import { words as kept } from '../../ui/kept/words.en.ts';
import { useReady } from '../../ui/use-units.ts';
import type { JobProps } from './JobSheet.tsx';
import { JOB_LIST_TITLE, JobList } from './JobList.tsx';
import { makeJobs } from './model.ts';
import { words } from './words.en.ts';

interface Loaded {
  readonly Sheet: ComponentType<JobProps>;
  readonly planner: JobProps['planner'];
  readonly own: JobProps['own'];
}

/** The page's island: the jobs of this device, or the one that the address names. */
export function Jobs() {
  const jobs = useMemo(() => makeJobs({ store: jobStore(), sheets: sheetStore() }), []);
  const ready = useReady();
  const { at, frame, arrived, open, close } = useOpened(jobs, JOB_LIST_TITLE);
  const loaded = useSignal<Loaded | null>(null);
  const missed = useSignal(false);
  const job = at.value === '' ? undefined : jobs.job(at.value);
  const opened = job !== undefined && !isDeleted(job);
  useEffect(() => {
    if (!opened || loaded.value !== null) return;
    // Together, so that nothing of the sheet is pushed down by what comes after it.
    Promise.all([
      import('./JobSheet.tsx'),
      import('../../planner/load.ts').catch(() => null),
      import('../../own-sheet/OnTransmission.tsx').catch(() => null),
    ]).then(
      ([{ JobSheet }, planner, own]) => {
        loaded.value = { Sheet: JobSheet, planner, own };
      },
      () => {
        missed.value = true;
      },
    );
  }, [opened]);

  const known = jobs.loaded.value;
  const any = jobs.count.value > 0;
  useEffect(() => {
    if (known) leaveWord(any);
  }, [known, any]);

  const fault = jobs.fault.value;
  const there = loaded.value;
  return (
    <div class="jobs" id="jobs" ref={frame} data-ready={ready && known} data-any={any}>
      <p class="field-error no-print" role="alert">
        {fault && kept.fault[fault]}
      </p>
      {opened ? (
        there ? (
          <there.Sheet
            key={job.id}
            jobs={jobs}
            id={job.id}
            planner={there.planner}
            own={there.own}
            arrived={arrived.current}
            close={close}
          />
        ) : (
          <p role="status">{missed.value ? kept.missed : kept.fetching}</p>
        )
      ) : (
        <>
          {at.value !== '' && known && <p role="status">{words.gone}</p>}
          <JobList jobs={jobs} open={open} />
        </>
      )}
    </div>
  );
}
