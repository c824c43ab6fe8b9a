import { isDeleted, merge, type Job } from '../jobs/job.ts';
import { isSheetDeleted, mergeSheets, type OwnSheet } from '../sheets/own-sheet.ts';
import type { Ways } from './compare-records.ts';

export const ways: { readonly jobs: Ways<Job>; readonly sheets: Ways<OwnSheet> } = {
  jobs: { merge, isDeleted, nameOf: ({ label }) => label.value },
  sheets: { merge: mergeSheets, isDeleted: isSheetDeleted, nameOf: ({ name }) => name.value },
};
