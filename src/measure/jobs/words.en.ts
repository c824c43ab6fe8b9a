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
  remove: (label: string) => `Delete ${label}`,
  removeShort: 'Delete',
  removed: (label: string) => `${label} is deleted.`,
  undo: 'Bring it back',
  files: 'To a file, and back',
  filesHow:
    'Browsers clear what they keep when room gets short. A file on another disk is the only copy that is sure.',
  save: 'Save all jobs to a file',
  fileName: 'job-sheets.json',
  take: 'Take jobs in from a file',
  taken: (p: { added: string; changed: string }) =>
    `${p.added} added, ${p.changed} brought up to date. Where both had a change, the later one stands.`,
  unreadable: (count: string) =>
    `${count} in that file could not be read, and are left out. Keep the file.`,
  refused: {
    empty: (name: string) => `${name} is empty. Nothing here has changed.`,
    notText: (name: string) =>
      `${name} is not text. Choose a file that was saved here. Nothing here has changed.`,
    foreign: (name: string) =>
      `${name} does not hold job sheets of this site. Choose a file that was saved here. Nothing here has changed.`,
    newer: (name: string) =>
      `${name} was saved by a later version of this site. Load the page again, then try once more. Nothing here has changed.`,
    broken: (name: string) =>
      `${name} was saved here, but it is damaged or cut short. Look for another copy of it. Nothing here has changed.`,
  },
  notRead: (name: string) =>
    `${name} could not be opened. It may have been moved or renamed. Nothing here has changed.`,
  damaged: (count: string) =>
    `${count} of the sheets kept here cannot be read. They are left where they lie.`,
  saveDamaged: 'Save those to a file',
  damagedName: 'unreadable-job-sheets.json',
  fault: {
    full: 'Not kept: this browser has no room left. You can go on working. Save to a file before you close the page.',
    blocked:
      'Not kept: this browser keeps nothing for this site. You can go on working. Save to a file before you close the page.',
    newer:
      'Not kept: a later version of this site has been here. Save to a file, then load the page again.',
    busy: 'Not kept: another tab of this site holds the job sheets. Close it; the next change here is kept again.',
    failed:
      'Not kept: the browser reported a fault in what it stores. You can go on working. Save to a file before you close the page.',
  },
  fetching: 'The sheet is loading.',
  missed: 'The sheet did not load. Check that you are connected, then load the page again.',
  gone: 'That job is not on this device, or it was deleted. The ones that are stand below.',
};
