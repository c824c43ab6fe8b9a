export const words = {
  bites: {
    head: 'How often it bites.',
    caption: (p: { cars: string }) =>
      `Of 100 shops that did ${p.cars} such cars, so many saw this many comebacks.`,
    back: 'Came back',
    left: 'Part left',
    renewed: 'Part renewed',
    rows: ['None', 'One', 'Two', 'Three or more'],
    says: (p: { none: string }) =>
      `${p.none} of 100 shops left the part and saw none come back. So “we never had one back” proves little.`,
  },
  money: {
    head: 'In your money.',
    caption: (p: { rate: string }) =>
      `One car, at ${p.rate} an hour. Any currency will do, as long as it is the same one throughout. If your amounts do not fit, count in hundreds or thousands.`,
    what: 'One car',
    hours: 'Hours',
    money: 'Money',
    comeback: 'A comeback costs',
    costs: 'Renewing it now costs',
    worth: 'Renewing it is worth',
  },
  taken: {
    head: 'What is taken for granted.',
    chances:
      'All chances and costs that stand here at first are invented. Nobody publishes such chances for your shop. Count your own cars: how many of the last fifty came back, and for which part.',
    alone:
      'Cars come back each by itself. The part that a second visit has to pay for as well is left out; it would raise what renewing is worth by a few parts in a hundred. So is the car that fails far from home. If that can hurt somebody, no sum of this kind decides.',
  },
};
