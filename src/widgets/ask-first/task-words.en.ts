export const words = {
  tasks: {
    two: {
      words:
        'Another car, and you do not know what it has. Ask two of these three questions, no more, so that the list is as open as one of 3 names or fewer.',
      hint: 'Before you press, read what each question is worth. After the first answer read it again.',
      after: (p: { open: string; minutes: string }) =>
        `Which ranges and cold or hot, and 17 names are as open as ${p.open}. The minutes would have left ${p.minutes} in place of either. Late in one range and cold only is a hardened lip until a reading says otherwise.`,
    },
    clock: {
      words:
        'The car of the run again: a split seal, hot. On a flat road from an overnight stop its customer says ten minutes to half an hour. Leave the car as it is. Find the day on which it also stood overnight, and the customer says within ten minutes.',
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
    tooMany: 'You have asked all three. Take one back and see which you can do without.',
    open: (p: { open: string }) => `The list is as open as one of ${p.open}.`,
    day: (p: { answer: string }) => `Overnight, the customer says ${p.answer}`,
    warmStart: 'This car did not stand overnight, so it started warm.',
    alike: (p: { fault: string }) =>
      `For all that its customer can say, ${p.fault} and nothing wrong are the same.`,
    apart: (p: { name: string }) => `The talk points at ${p.name}, and a good car is far behind.`,
  },
};
