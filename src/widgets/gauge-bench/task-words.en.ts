export const words = {
  tasks: {
    gap: {
      words: (p: { car: string; read: string; command: string }) =>
        `Car ${p.car}. The forward tap reads ${p.read} of ${p.command}, hot at idle. A missing check ball is a hole and can give that, and so can a gap. Add one reading, no more, that takes the missing ball off the list.`,
      hint: 'Thin fluid runs through a gap. A hole minds the fluid far less. So which reading would differ?',
      after: (p: { cold: string; command: string; left: string; speed: string }) =>
        `Cold the tap has ${p.cold} of ${p.command}. A hole would leak cold as well, so it is off. Beside 1500 rpm in place of cold it would stay on, with ${p.speed} names in all. After your pair ${p.left} names are left: the line and another range take the next ones off.`,
    },
    line: {
      words:
        'Find a car whose line in Drive has its command, hot at 1500 rpm, and whose forward tap has not. Take both readings.',
      hint: 'Start with the line. Where that is short, the tap tells you little more.',
      after: (p: { behind: string }) =>
        `${p.behind} of the fifteen cars read like that. What feeds all clutches is cleared up to the line. It is lost at the feed or behind it: at a hole, a gap, a seal, a valve of that clutch, or in fluid that is too thin.`,
    },
    none: {
      words:
        'A customer says that it slips, hot and cold, in every range. Find a car whose three clutch taps have their command, cold and hot, all at 1500 rpm. Here nothing burns.',
      hint: 'It takes two readings at each of three taps. One wrong reading is enough to drop a car.',
      after: (p: { clear: string }) =>
        `${p.clear} cars are like that: one with worn plates, one with a false turbine signal. The gauge cannot tell them apart, nor from a good car. Pressure is cleared, and that is a result. Prove the speed reading next, then look at friction.`,
    },
  },
  reached: {
    tooMany: 'That is more than one reading added. Press one again to wipe it off.',
    still: 'Those two leave the missing ball on the list.',
    lineShort: 'In this car the line itself is short.',
    tapRight: 'Here line and tap both have their command.',
    lowAt: (p: { place: string; when: string; share: string }) =>
      `${p.place}, ${p.when} rpm: ${p.share} of its command.`,
    more: 'Right so far. Some of the six are still missing.',
  },
};
