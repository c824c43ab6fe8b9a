/** What stands on the page of one's own sheets, beside the fields. */
export const words = {
  noScript: 'A sheet of your own takes JavaScript, which is off or has not loaded.',
  fresh: 'New sheet',
  name: 'Name of the sheet',
  nameHow: 'What you call this transmission in the shop. It stays on your device.',
  nameMissing: 'Give the sheet a name first, one letter is enough.',
  nameEmpty: 'The sheet needs a name. It stays the old one until you type another.',
  start: 'Start the sheet',
  title: 'Sheets on this device',
  loading: 'Looking for the sheets on this device.',
  none: 'None yet. A sheet that you start stands here until you delete it.',
  line: (p: { typed: string; when: string }): string =>
    p.typed === '1'
      ? `1 number of yours, changed ${p.when}`
      : `${p.typed} numbers of yours, changed ${p.when}`,
  remove: (name: string) => `Delete ${name}`,
  removeShort: 'Delete',
  removed: (name: string) => `${name} is deleted.`,
  undo: 'Bring it back',
  files: 'To a file, and back',
  filesHow:
    'Browsers clear what they keep when room gets short. Save the sheets to a file, keep it elsewhere, or hand it to a colleague.',
  save: 'Save all sheets to a file',
  saveOne: 'Save this sheet to a file',
  fileName: 'transmission-sheets.json',
  take: 'Take sheets in from a file',
  taken: (p: { added: string; changed: string }) =>
    `${p.added} added, ${p.changed} brought up to date. Where both had a change, the later one stands.`,
  unreadable: (count: string) =>
    `${count} in that file could not be read, and are left out. Keep the file.`,
  refused: {
    empty: (name: string) => `${name} is empty. Nothing here has changed.`,
    notText: (name: string) =>
      `${name} is not text. Choose a file that was saved here. Nothing here has changed.`,
    foreign: (name: string) =>
      `${name} does not hold transmission sheets of this site. Choose a file that was saved here. Nothing here has changed.`,
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
  damagedName: 'unreadable-transmission-sheets.json',
  fault: {
    full: 'Not kept: this browser has no room left. You can go on working. Save to a file before you close the page.',
    blocked:
      'Not kept: this browser keeps nothing for this site. You can go on working. Save to a file before you close the page.',
    newer:
      'Not kept: a later version of this site has been here. Save to a file, then load the page again.',
    busy: 'Not kept: another tab of this site holds the sheets. Close it; the next change here is kept again.',
    failed:
      'Not kept: the browser reported a fault in what it stores. You can go on working. Save to a file before you close the page.',
  },
  gone: 'That sheet is not on this device, or it was deleted. The ones that are stand below.',
  back: 'All sheets',
  kept: 'Every key is kept on this device as you type. What you leave empty is assumed: it stays as on the training transmission.',
  count: (p: { yours: string; of: string; assumed: string }) =>
    `${p.yours} of ${p.of} are yours, ${p.assumed} are assumed.`,
  mend: (count: string): string =>
    count === '1'
      ? 'One field below cannot be right. Nothing is worked out until it is mended.'
      : `${count} fields below cannot be right. Nothing is worked out until they are mended.`,
  goTo: (label: string) => `Go to: ${label}`,
  more: 'More, if you know it',
  planner: 'The planner on this sheet',
  toJobs: 'To the job sheets: choose it there for a job',
  toPlanner: 'To the planner',
  print: 'Print this sheet',
  fetching: 'The sheet is loading.',
  missed: 'The sheet did not load. Check that you are connected, then load the page again.',
};
