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
  save: 'Save all sheets to a file',
  saveOne: 'Save this sheet to a file',
  fileName: 'transmission-sheets.json',
  take: 'Take sheets in from a file',
  foreign: (name: string) =>
    `${name} does not hold transmission sheets of this site. Choose a file that was saved here. Nothing here has changed.`,
  damagedName: 'unreadable-transmission-sheets.json',
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
};
