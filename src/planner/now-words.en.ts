/** What the readings come to, said where the hand is. */
export const words = {
  weighing: 'Weighing your readings.',
  first: (p: { top: string; share: string }) => `First on the list now: ${p.top}, ${p.share}.`,
  next: (p: { test: string; minutes: string }) => `Measure next: ${p.test}, ${p.minutes} minutes.`,
  done: 'No test left is worth its minutes. What stands first is what your readings say; if you open it up, look there first.',
  clash: (p: { one: string; other: string }) =>
    `“${p.one}” and “${p.other}” cannot both be right on one car, by anything that this site knows. Check units, range, gear and tap of both, and take the quicker one again.`,
};
