export const words = {
  start: (lesson: string) => `Start with lesson ${lesson}`,
  goOn: (lesson: string) => `Go on with lesson ${lesson}`,
  carryOn: (lesson: string) => `Carry on with lesson ${lesson}`,
  again: (lesson: string) => `Read lesson ${lesson} again`,
  takes: (title: string, minutes: string) => `${title}. ${minutes} minutes.`,
  wasAt: (title: string, section: string) => `${title}. You were at “${section}”.`,
  allDone: (lessons: string, first: string) =>
    `You marked all ${lessons} lessons done. ${first} is the first.`,
  noneDone: 'No lesson marked as done yet. This device remembers which you mark.',
  someDone: (done: string, written: string) =>
    `You marked ${done} of ${written} lessons as done, on this device.`,
  notKept: {
    blocked: 'This browser keeps nothing for this site, so your progress is not remembered.',
    unreadable: 'What this browser kept of your progress cannot be read. It was not thrown away.',
    newer: 'A newer version of this site wrote your progress. Reload the page to see it.',
  },
};
