import { isDeleted, merge } from '../jobs/job.ts';
import { isMeetingDeleted, mergeMeetings } from '../meetings/own-meeting.ts';
import { isSheetDeleted, mergeSheets } from '../sheets/own-sheet.ts';
import type { Ways } from './compare-records.ts';
import type { Records } from './records.ts';

export const ways: { readonly [Name in keyof Records]: Ways<Records[Name][number]> } = {
  jobs: { merge, isDeleted, nameOf: ({ label }) => label.value },
  sheets: { merge: mergeSheets, isDeleted: isSheetDeleted, nameOf: ({ name }) => name.value },
  meetings: {
    merge: mergeMeetings,
    isDeleted: isMeetingDeleted,
    nameOf: ({ plan }) => plan.value.title,
  },
};
