export const words = {
  title: 'What can this clutch hold?',
  controls: {
    pressure: 'Clutch pressure',
    friction: 'Friction of the plates',
    faces: 'Faces that rub',
    example: 'Which clutch',
    area: 'Piston area',
    radius: 'Mean radius',
    spring: 'Return spring',
  },
  linings: { worn: 'worn or burnt paper', paper: 'good paper in oil', dry: 'dry lining' },
  rubbing: {
    oneSide: 'one side of one plate',
    onePlate: 'both sides of one plate',
    plates: (p: { plates: string }) => `both sides of ${p.plates} plates`,
  },
  examples: {
    training: 'The training clutch',
    own: 'Your own numbers',
    book: (p: { book: string }) => `Book: ${p.book}`,
  },
  predict: {
    question: (p: { full: string; half: string; before: string }) =>
      `The training clutch has ${p.full} behind its piston and can carry ${p.before}. The gauge drops to half, ${p.half}. The torque it can carry:`,
    options: {
      half: {
        words: 'Drops to half as well.',
        why: (p: { fullPush: string; halfPush: string; spring: string }) =>
          `So it would with no return spring. The oil’s push does halve, from ${p.fullPush} to ${p.halfPush}. But the spring takes the same ${p.spring} both times, and it takes it first.`,
      },
      less: {
        words: 'Drops to less than half.',
        why: (p: {
          fullPush: string;
          halfPush: string;
          spring: string;
          fullLeft: string;
          halfLeft: string;
          before: string;
          after: string;
        }) =>
          `The spring takes its ${p.spring} first, whatever the pressure. Out of ${p.fullPush} that leaves ${p.fullLeft} for the plates. Out of ${p.halfPush} it leaves ${p.halfLeft}. Torque follows what is left, so ${p.before} becomes ${p.after}.`,
      },
      more: {
        words: 'Drops, but keeps more than half.',
        why: (p: { half: string; halfPush: string; spring: string }) =>
          `It would if the spring helped the oil. It works against it: it is there to let the clutch go. At ${p.half} it takes ${p.spring} of ${p.halfPush}, over half.`,
      },
    },
    runLabel: 'Halve the pressure',
  },
  outcome: (p: { before: string; after: string; share: string }) =>
    `From ${p.before} to ${p.after}: ${p.share} of it is left, at half the pressure.`,
  says: {
    book: (p: { book: string; has: string; printed: string }) =>
      `${p.book}: holds ${p.has}. The book says ${p.printed}.`,
    bookPower: (p: { book: string; has: string; speed: string; power: string; printed: string }) =>
      `${p.book}: holds ${p.has}, at ${p.speed} ${p.power}. The book says ${p.printed}.`,
    nothing: (p: { pressure: string; springPressure: string }) =>
      `Slips: ${p.pressure} does not beat the spring, which takes the first ${p.springPressure}. The clutch carries nothing.`,
    holds: (p: { has: string }) => `Holds: it can carry ${p.has}.`,
    offChart: (p: { has: string }) => `Holds: it can carry ${p.has}, off the top of the chart.`,
    slips: (p: { has: string }) => `Slips: it can carry ${p.has}.`,
    needed: {
      idle: (p: { need: string }) => `Standing in gear at idle asks for ${p.need}.`,
      gentle: (p: { need: string; speed: string }) =>
        `A gentle take-off at ${p.speed} asks for ${p.need}.`,
      'take-off': (p: { need: string; speed: string }) =>
        `A firm take-off at ${p.speed} asks for ${p.need}.`,
    },
    gauge: (p: { pressure: string }) => `That takes ${p.pressure} on the gauge.`,
  },
  chart: {
    name: 'Torque held against pressure',
    pressure: 'Clutch pressure',
    torque: 'Torque it can hold',
    bandAsked: 'needed',
    band: (p: { speed: string }) => `needed: idle to ${p.speed}`,
    forComparison: 'the band is what our car needs, for comparison.',
    takeaway: {
      idle: (p: { need: string; speed: string }) => `${p.need} is needed to stand in gear at idle.`,
      gentle: (p: { need: string; speed: string }) =>
        `${p.need} is needed for a gentle take-off at ${p.speed}.`,
      'take-off': (p: { need: string; speed: string }) =>
        `${p.need} is needed for a firm take-off at ${p.speed}.`,
    },
    holdsFrom: (p: { pressure: string }) => `holds from ${p.pressure}`,
    training: 'training clutch',
    own: 'this clutch',
    now: 'now',
  },
  piston: { lead: 'Who gets the push:', rest: 'the spring first, then the plates.' },
  pack: {
    lead: 'The pack:',
    rest: 'drawn with ten faces, whatever number you set.',
    carries: 'It can carry',
    neither: 'slips in gear, cannot take off',
    stands: 'stands in gear, cannot take off',
    both: 'stands in gear, takes off',
  },
  inWords: 'The drawing in words',
  books: {
    name: 'Against the books',
    lead: 'Against the books:',
    rest: 'dry clutches without a return spring, reckoned with the same formula as ours.',
    book: 'The book',
    model: 'This model',
    'khurmi-10.28': {
      short: 'Theory of Machines, example 10.28',
      full: 'R.\u00a0S.\u00a0Khurmi and J.\u00a0K.\u00a0Gupta, Theory of Machines, example 10.28',
      how: (p: { inner: string; outer: string; pressure: string }) =>
        `Four faces, friction 0.3, radii ${p.inner} and ${p.outer}, ${p.pressure} at the inner edge, uniform wear.`,
    },
    'bhandari-11.1': {
      short: 'Machine Elements, example 11.1',
      full: 'V.\u00a0B.\u00a0Bhandari, Design of Machine Elements, example 11.1',
      how: (p: { inner: string; outer: string; pressure: string }) =>
        `One face, friction 0.2, radii ${p.inner} and ${p.outer}, ${p.pressure} at the inner edge, uniform wear.`,
    },
    'bhandari-11.2': {
      short: 'Machine Elements, example 11.2',
      full: 'V.\u00a0B.\u00a0Bhandari, Design of Machine Elements, example 11.2',
      how: (p: { inner: string; outer: string; pressure: string }) =>
        `The same clutch with ${p.pressure} all over the ring, uniform pressure.`,
    },
  },
};
