/** The lists in a bundle, apart from the forms of its parts: what only names them does not load those. */
import type { Job } from '../jobs/job.ts';
import type { OwnMeeting } from '../meetings/own-meeting.ts';
import type { OwnSheet } from '../sheets/own-sheet.ts';

/** Lists of records with an id, of which two devices may have changed the same one. Marks of deletions as well, so that the other device deletes too. */
export interface Records {
  readonly jobs: readonly Job[];
  readonly sheets: readonly OwnSheet[];
  /** Meetings of one's own. */
  readonly meetings: readonly OwnMeeting[];
}

export const recordNames = ['jobs', 'sheets', 'meetings'] as const satisfies (keyof Records)[];
