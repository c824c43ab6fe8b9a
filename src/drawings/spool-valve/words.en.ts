export const words = {
  title: 'A spool valve at work',
  command: 'Command',
  exhaust: 'Exhaust',
  toClutch: 'To the clutch',
  pushesBack: ['Clutch pressure', 'pushes back'],
  land: 'Land',
  stem: 'Spool stem',
  describe: {
    pushes: (p: { command: string; clutch: string; line: string }) =>
      `Command pressure of ${p.command} pushes the spool one way; clutch pressure of ${p.clutch} and the spring push it back. Line pressure is ${p.line}.`,
    feeds: (p: { share: string }) =>
      `The spool is open to line, ${p.share} of its way, and feeds the clutch.`,
    drains: (p: { share: string }) =>
      `The spool is open to exhaust, ${p.share} of its way, and drains the clutch.`,
    covers: 'The spool covers both ports: it neither feeds nor drains.',
  },
};
