/** What is said where a transmission is chosen. What stands on the sheet itself is in src/measure/transmission. */
export const words = {
  choice: {
    label: 'Transmission',
    training: 'Training transmission',
    second: 'Second training transmission',
    yours: 'Your sheets',
    unknown: 'A sheet that is not here',
    enter: 'Enter a sheet of your own transmission',
    open: 'Open this sheet',
  },
  table: {
    fetching: 'The planner’s table is loading.',
    ready: 'The planner’s table of this sheet is made and kept on this device.',
    none: 'The planner has no table of this sheet yet. It works out every test on every fault from your numbers, which takes about a minute, once. The page stays usable meanwhile.',
    make: 'Make the table',
    making: 'Working out the table from your numbers',
    soFar: (share: string) => `${share} done`,
    cancel: 'Cancel',
    after: {
      cancelled: 'You stopped it. Nothing was kept; start it again when it suits you.',
      failed:
        'The model does not settle on these numbers, so there is no table. Open the sheet and look at what it says of the healthy car.',
      stopped:
        'The browser stopped the work. It may be short of memory, or the connection was lost. Close other pages and try again.',
    },
    faulty: (name: string) =>
      `Something on the sheet “${name}” cannot be right. Open it and mend the fields that say so; nothing is worked out from it until then.`,
    gone: 'The sheet that this was on is not on this device, or it was deleted. Take it in from its file, or choose another transmission.',
    missed:
      'The planner’s table did not load. Check that you are connected, then load the page again.',
  },
  /** Where a list of causes would stand. */
  noList: {
    noTable: (name: string) =>
      `No list of causes yet: the planner has no table of “${name}”. Make the table under “Transmission” on this page, or with the sheet. What you take down here stays.`,
    making: (name: string) =>
      `No list of causes yet: the table of “${name}” is being worked out. Take down your readings meanwhile.`,
    faulty: (name: string) =>
      `No list of causes: something on the sheet “${name}” cannot be right. Open it, mend the fields that say so, then make its table. What you take down here stays.`,
    gone: 'No list of causes: the sheet that this was on is not on this device, or it was deleted. Take it in from its file, or choose another transmission.',
    missed:
      'No list of causes: the planner’s table did not load. Check that you are connected, then load the page again.',
    toSheets: 'Open your sheets',
  },
};
