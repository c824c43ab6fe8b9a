export const words = {
  tasks: {
    two: {
      words:
        'Another car, and you do not know what it has. Ask two of these three questions, no more, so that what is left is as open as a list of 3 or fewer.',
      hint: 'Before you press, read what each question is worth. After the first answer read it again.',
      after: (p: { open: string; minutes: string }) =>
        `Those two make 17 names as open as a list of ${p.open}. With the minutes in place of either it would be ${p.minutes}. One range, bad cold and right warm: that looks like a hardened lip, and a reading has to prove it.`,
    },
    clock: {
      words:
        'The split seal of the run again. It stood overnight, the road was flat, and its customer says ten minutes to half an hour. Leave the car as it is and find another day: overnight as well, and the customer says within ten minutes.',
      hint: 'Overnight it starts just as cold. Something else has to warm it quicker.',
      after: (p: { from: string; flat: string; hills: string; worth: string }) =>
        `Same crack, and it shows from ${p.from} both times. The flat road takes ${p.flat} to get there, the hills ${p.hills}. The minutes belong to the road and the degrees to the fault. So ask what it had done before: by itself that tells nothing, and beside the minutes it is worth ${p.worth} bits.`,
    },
    end: {
      words:
        'Talk has an end. Every question has been asked. Find a car with a fault that its customer cannot tell from a car with nothing wrong.',
      hint: 'Look for a fault that costs nothing that one would notice: no wait, no slip, no light.',
      after:
        'In our model the wrong fluid by itself makes nobody wait. Talk cannot find it, and neither can it clear it. A name that talk leaves standing needs a reading.',
    },
  },
  reached: {
    tooMany: 'That makes three questions. Take one back and see which you can do without.',
    open: (p: { open: string }) => `What is left is as open as a list of ${p.open}.`,
    day: (p: { answer: string }) => `Overnight, the customer says ${p.answer}`,
    warmStart: 'This car did not stand overnight, so it started warm.',
  },
};
