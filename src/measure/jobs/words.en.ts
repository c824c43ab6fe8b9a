/** What stands on the page while no job is open. */
export const words = {
  noScript: 'Job sheets take JavaScript, which is off or has not loaded.',
  fresh: 'New job',
  label: 'Short label',
  labelHow:
    'Bay, key tag, work order: whatever you find it by. Leave the customer’s name out of it.',
  labelMissing: 'Give the job a label first, one letter is enough.',
  /** In the place of a label that is empty. */
  noLabel: 'No label',
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
  /** Sheets of one's own that jobs run on, and that go with them. */
  sheets: {
    added: (count: string): string =>
      count === '1'
        ? 'The transmission sheet that a job runs on came along.'
        : `${count} transmission sheets that jobs run on came along.`,
    sameName: (name: string) =>
      `A different sheet named “${name}” was here already. Both are kept; open them under Your transmission and rename one.`,
    damaged: (count: string): string =>
      count === '1'
        ? 'One transmission sheet in that file is damaged and is left out. The job that runs on it says that its sheet is not here. Keep the file.'
        : `${count} transmission sheets in that file are damaged and are left out. The jobs that run on them say that their sheet is not here. Keep the file.`,
    unkept:
      'The transmission sheets in that file could not be kept in this browser. Take them in again under Your transmission once there is room.',
    missing: (count: string): string =>
      count === '1'
        ? 'Saved. One transmission sheet that jobs run on is not on this device, so the file does not carry it.'
        : `Saved. ${count} transmission sheets that jobs run on are not on this device, so the file does not carry them.`,
  },
  gone: 'That job is not on this device, or it was deleted. The ones that are stand below.',
};
