import { useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { ComponentType } from 'preact';
import { isDeleted, type Job } from '../../storage/jobs/job.ts';
import { jobStore } from '../../storage/jobs/job-store.ts';
import { useReady } from '../../ui/use-units.ts';
import type { JobProps } from './JobSheet.tsx';
import { JobList } from './JobList.tsx';
import { makeJobs } from './model.ts';
import { words } from './words.en.ts';

interface Loaded {
  readonly Sheet: ComponentType<JobProps>;
  readonly planner: JobProps['planner'];
  readonly own: JobProps['own'];
}

/** The page's island: the jobs of this device, or the one that the address names. */
export function Jobs() {
  const jobs = useMemo(() => makeJobs({ store: jobStore() }), []);
  const ready = useReady();
  const at = useSignal('');
  const loaded = useSignal<Loaded | null>(null);
  const missed = useSignal(false);
  const frame = useRef<HTMLDivElement>(null);
  /** A job was opened here, and not by the address: the keys go along. */
  const arrived = useRef(false);

  useEffect(() => {
    const look = (): void => {
      at.value = location.hash.slice(1);
    };
    const leave = (): void => jobs.leave();
    const hidden = (): void => {
      if (document.visibilityState === 'hidden') void jobs.keep();
    };
    look();
    void jobs.load();
    const stop = jobs.watch();
    addEventListener('popstate', look);
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hidden);
    return () => {
      stop();
      removeEventListener('popstate', look);
      removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', hidden);
    };
  }, []);

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

  const open = (next: Job): void => {
    arrived.current = true;
    history.pushState(null, '', `#${next.id}`);
    at.value = next.id;
    frame.current?.scrollIntoView({ block: 'start' });
  };
  const close = (): void => {
    history.pushState(null, '', location.pathname);
    at.value = '';
    frame.current?.scrollIntoView({ block: 'start' });
    document.getElementById('job-new')?.focus({ preventScroll: true });
  };
  const fault = jobs.fault.value;
  const there = loaded.value;
  return (
    <div class="jobs" id="jobs" ref={frame} data-ready={ready && jobs.loaded.value}>
      <p class="field-error no-print" role="alert">
        {fault && words.fault[fault]}
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
          <p role="status">{missed.value ? words.missed : words.fetching}</p>
        )
      ) : (
        <>
          {at.value !== '' && jobs.loaded.value && <p role="status">{words.gone}</p>}
          <JobList jobs={jobs} open={open} />
        </>
      )}
    </div>
  );
}
