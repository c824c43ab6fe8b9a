import type { Job } from '../../storage/jobs/job.ts';
import { words } from './words.en.ts';

/** What a job is called on the page; one whose label is empty can be found and pressed all the same. */
export const labelOf = ({ label }: Job): string => label.value.trim() || words.noLabel;
