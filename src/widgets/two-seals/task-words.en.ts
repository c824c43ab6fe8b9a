export const words = {
  tasks: {
    alike: {
      words:
        'Both cars stand in your shop, the split seal of the course and the lip that is hard through. Find a temperature where nobody could tell them apart with a watch.',
      hint: 'Cold the hard lip is later, hot the split seal. Somewhere the lines cross.',
      after: (p: { alike: string; both: string; sound: string }) =>
        `At about ${p.alike} both take ${p.both}, and a healthy car takes ${p.sound}. That is a car that has stood in a warm shop. A drive round the block there proves nothing for either. Take the first one hotter and the second one colder.`,
    },
    frost: {
      words: (p: { late: string; still: string }) =>
        `A customer says that Drive comes late on frosty mornings. Find a state where the hard lip takes at least ${p.late} more than a healthy car, while the split seal takes less than ${p.still} more.`,
      hint: 'It has to be cold, and the lip hard. In frost a wide crack leaks as well.',
      after: (p: { cold: string; soundCold: string; frost: string; sound: string; hard: string }) =>
        `Frost brings the hard lip out and hides the crack. Do not look for it too deep in the frost: at ${p.cold} even a healthy car takes ${p.soundCold}. At ${p.frost} it takes ${p.sound} and the hard lip ${p.hard}. The other range, or a sister car, shows what frost alone costs.`,
    },
    wide: {
      words: (p: { late: string; cool: string }) =>
        `“Late cold, so it is a hard lip.” Find a crack that takes at least ${p.late} more than a healthy car at ${p.cool} or colder.`,
      hint: 'Leave the temperature and widen the crack first. Then look a little colder and a little warmer.',
      after: (p: { crack: string; frost: string; split: string; sound: string }) =>
        `A crack of ${p.crack} is late in frost too: ${p.split} at ${p.frost}, beside ${p.sound}. So late cold alone does not prove a hard lip. Warm it: a hard lip comes right, a wide crack gets worse.`,
    },
  },
  reached: {
    late: (p: { temp: string; split: string; hard: string }) =>
      `At ${p.temp}: split ${p.split} more than a healthy one, hard lip ${p.hard} more.`,
    given: (p: { temp: string; hard: string }) =>
      `At ${p.temp} the split seal has the clutch given up; the hard lip takes ${p.hard} more than a healthy one.`,
    warm: (p: { cool: string }) => `It has to happen at ${p.cool} or colder.`,
  },
};
