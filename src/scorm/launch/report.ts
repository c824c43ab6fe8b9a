/** One visit as a platform sees it. Whatever the platform answers, the course goes on. */
import type { Api } from './find-api.ts';
import { resume, scoreOf, statusOf, suspend, type Bank, type Standing } from './standing.ts';

const RANK = ['incomplete', 'failed', 'completed', 'passed'];

/** Hours, minutes and seconds as SCORM 1.2 writes a time. */
export function timespan(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / 1000));
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${String(Math.floor(seconds / 3600)).padStart(4, '0')}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

export function openReport(api: Api, bank: Bank, now: () => number) {
  const began = now();
  const open = api.LMSInitialize('') === 'true';
  const before = open ? api.LMSGetValue('cmi.core.lesson_status') : '';
  const start = resume(bank, open ? api.LMSGetValue('cmi.suspend_data') : '');
  let told = '';
  let over = !open;

  function tell(standing: Standing): void {
    const kept = suspend(bank, standing);
    if (over || kept === told) return;
    told = kept;
    const status = statusOf(bank, standing);
    api.LMSSetValue('cmi.core.score.min', '0');
    api.LMSSetValue('cmi.core.score.max', '100');
    api.LMSSetValue('cmi.core.score.raw', String(scoreOf(bank, standing)));
    // What a platform has put down as passed is not taken back.
    if (RANK.indexOf(status) >= RANK.indexOf(before))
      api.LMSSetValue('cmi.core.lesson_status', status);
    api.LMSSetValue('cmi.suspend_data', kept);
    api.LMSCommit('');
  }
  return {
    open,
    start,
    tell,
    /** The last word; a page may be left in more than one way. */
    finish(): void {
      if (over) return;
      over = true;
      api.LMSSetValue('cmi.core.session_time', timespan(now() - began));
      // Or the next visit would be a new attempt, with nothing kept.
      api.LMSSetValue('cmi.core.exit', 'suspend');
      api.LMSCommit('');
      api.LMSFinish('');
    },
  };
}
