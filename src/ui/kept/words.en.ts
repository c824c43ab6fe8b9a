/** Of whatever a page keeps on the device as records: jobs, sheets. What they are called stands with the page. */
export const words = {
  remove: (name: string) => `Delete ${name}`,
  removeShort: 'Delete',
  removed: (name: string) => `${name} is deleted.`,
  undo: 'Bring it back',
  files: 'To a file, and back',
  filesHow:
    'Browsers clear what they keep when room gets short. A file on another disk is the only copy that is sure, and one that a colleague can take in.',
  taken: (p: { added: string; changed: string }) =>
    `${p.added} added, ${p.changed} brought up to date. Where both had a change, the later one stands.`,
  unreadable: (count: string) =>
    `${count} in that file could not be read, and are left out. Keep the file.`,
  refused: {
    empty: (name: string) => `${name} is empty. Nothing here has changed.`,
    notText: (name: string) =>
      `${name} is not text. Choose a file that was saved here. Nothing here has changed.`,
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
  fault: {
    full: 'Not kept: this browser has no room left. You can go on working. Save to a file before you close the page.',
    blocked:
      'Not kept: this browser keeps nothing for this site. You can go on working. Save to a file before you close the page.',
    newer:
      'Not kept: a later version of this site has been here. Save to a file, then load the page again.',
    busy: 'Not kept: another tab of this site holds what is kept. Close it; the next change here is kept again.',
    failed:
      'Not kept: the browser reported a fault in what it stores. You can go on working. Save to a file before you close the page.',
  },
  fetching: 'The sheet is loading.',
  missed: 'The sheet did not load. Check that you are connected, then load the page again.',
};
