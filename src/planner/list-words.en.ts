/** What is said of the causes: fetched with the answers. */
export const words = {
  title: 'What it may be',
  over: (p: { percent: string }) => `over ${p.percent}`,
  under: (p: { percent: string }) => `under ${p.percent}`,
  severity: (p: { from: string; to: string }) => `${p.from} to ${p.to} of the worst`,
  rest: (p: { percent: string }) => `All others together: ${p.percent}.`,
  sure: (p: { fault: string; percent: string }) =>
    `${p.fault}: ${p.percent}. Enough to stop asking. Before you replace it, take the readings that are at hand anyway, and see whether they fit.`,
  outside: 'Stop replacing parts, and look again: these readings fit no fault of this list.',
  twoFaults:
    'No single fault of this list gives all of these readings. Think of two faults, or of a reading that is wrong: take the one that surprises you once more.',
  pair: (p: { first: string; second: string; percent: string }) =>
    `Two faults together explain these readings better than any single one does. Of all pairs the likeliest is “${p.first}” with “${p.second}” (${p.percent} of the pairs; how likely two faults are at all is not in that).`,
  repairOne: 'Repair one of them, then repeat the readings before you touch the other.',
  notYet:
    'But something that is not in this list stands first: repair neither of them yet. Take the reading that surprises you most once more.',
  manyPairs:
    'Two faults together explain these readings better than any single one does, but more than one pair would. Measure on before you repair anything.',
  inClutch: (p: { fault: string; clutch: string }) => `${p.fault}, ${p.clutch}`,
};
