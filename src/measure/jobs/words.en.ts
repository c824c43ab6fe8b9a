/** What stands on the page while no job is open. */
export const words = {
  noScript: 'Job sheets take JavaScript, which is off or has not loaded.',
  fresh: 'New job',
  label: 'Short label',
  labelHow:
    'Bay, key tag, work order: whatever you find it by. Leave the customer’s name out of it.',
  labelMissing: 'Give the job a label first, one letter is enough.',
  open: 'Start the job',
  title: 'Jobs on this device',
  loading: 'Looking for the jobs on this device.',
  none: 'None yet. A job that you start stands here until you delete it.',
  search: 'Search labels and notes',
  found: (p: { shown: string; all: string }) => `${p.shown} of ${p.all} jobs`,
  noneFound: (p: { query: string }) => `No job has “${p.query}” in its label or its notes.`,
  readings: (count: string): string => (count === '1' ? '1 reading' : `${count} readings`),
  changed: (when: string) => `changed ${when}`,
  save: 'Save all jobs to a file',
  fileName: 'job-sheets.json',
  take: 'Take jobs in from a file',
  foreign: (name: string) =>
    `${name} does not hold job sheets of this site. Choose a file that was saved here. Nothing here has changed.`,
  damagedName: 'unreadable-job-sheets.json',
  gone: 'That job is not on this device, or it was deleted. The ones that are stand below.',
};
