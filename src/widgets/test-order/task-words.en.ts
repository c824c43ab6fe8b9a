export const words = {
  tasks: {
    name: {
      words: (p: { most: string }) =>
        `The same car goes on. Get one name above nine parts in ten within ${p.most} in all, and leave the pan on.`,
      hint: 'The air test would name it too. Add up what it takes. Then look for two tests that share the warm-up.',
      after: (p: { minutes: string; seal: string; share: string }) =>
        `${p.minutes}, and nothing was opened. Straight to the air test it would have been ${p.seal}, for ${p.share} of the list. Neither of the two tests proves the seal by itself. One takes off what spares Reverse, the other what pulls the line down, and the seal is what is left.`,
    },
    nothing: {
      words:
        'Same car, both ranges timed hot. Somebody says: do them all, to be thorough. Find a test that tells nothing here, and take that one alone.',
      hint: 'Look at what each can say. If one answer is as good as certain, you know it before you walk.',
      after: (p: { current: string; air: string }) =>
        `Drive and Reverse both have it, so a fault in the forward clutch alone is off the list. Its solenoid would have read as commanded and its air would have been quiet, whatever the car has: ${p.current} for the one and ${p.air} for the other, for nothing.`,
    },
    open: {
      words:
        'On each of these cars all that can be done from outside has been done. Find one where opening is right, and take the test that tells most for its minutes, one alone.',
      hint: 'Leave the cars that have one name already, those with nothing wrong, and those that fit nothing. Then look for a list of two or three.',
      after: (p: { cars: string; pan: string; worth: string }) =>
        `Cars like that are ${p.cars}. Outside, nothing tells the names that are left apart, and something is measurably wrong. So the pan comes off: on car 3 that is ${p.worth} halvings for ${p.pan}, little, and still the most for its minutes.`,
    },
  },
  reached: {
    open: (p: { minutes: string; open: string }) =>
      `${p.minutes}, and as open as a list of ${p.open}.`,
    late: (p: { minutes: string }) => `That took ${p.minutes} in all.`,
    opened: 'The pan is off.',
    one: 'That is more than one test. Take back all but one.',
    worth: (p: { worth: string }) => `That one was worth ${p.worth} halvings.`,
    sure: 'This car has one name already. Nothing has to be opened to find it.',
    sound: 'Nothing measured is wrong on this car. Nobody opens it to be sure.',
    outside: 'These readings fit nothing in the list. Look again before you open it.',
    better: 'Opening is right here, but another test tells more for its minutes.',
  },
};
