import { minutesOf } from './words.en.ts';

/** What the readings come to, said where the hand is. */
export const words = {
  weighing: 'Weighing your readings.',
  first: (p: { top: string; share: string }) => `First on the list now: ${p.top}, ${p.share}.`,
  fitsNothing: (p: { unlisted: string; share: string }) =>
    `These readings fit no fault of this list: “${p.unlisted}” stands first, ${p.share}.`,
  clashing:
    'These readings do not fit together. Take those that cannot both be right once more first; until then open nothing up and repair nothing by this list.',
  again: 'First take the readings that cannot both be right once more.',
  next: (p: { test: string; minutes: string }) =>
    `Measure next: ${p.test}, ${minutesOf(p.minutes)}.`,
  done: 'No test left is worth its minutes. What stands first is what your readings say; if you open it up, look there first.',
  noPart:
    'No test left is worth its minutes, and what stands first names no part: do not open it up on that. Take the reading that surprises you most once more.',
  /** Where there is room for a line each. */
  short: {
    first: (p: { top: string; share: string }) => `First: ${p.top}, ${p.share}`,
    next: (p: { test: string }) => `Next: ${p.test}`,
    clashing: 'Two readings cannot both be right. Take them once more first.',
    noneLeft: 'No test left is worth its minutes.',
  },
  clash: {
    /** By what the planner knows of cars. */
    known: (p: { one: string; other: string }) =>
      `“${p.one}” and “${p.other}” cannot both be right on one car, by anything that this site knows. Check units, range, gear and tap of both, and take the quicker one again.`,
    twice: (p: { one: string; other: string }) =>
      `“${p.one}” and “${p.other}” cannot both be right on one car at one fluid temperature: two tries at one test do not come out that far apart. Check both for a slip, units and gear, then take it a third time.`,
    aboveLine: (p: { one: string; other: string }) =>
      `“${p.one}” and “${p.other}” cannot both be right on one car at one fluid temperature: a clutch cannot hold more than the line that feeds it. Check units, gear and tap of both, and take the quicker one again.`,
  },
};
