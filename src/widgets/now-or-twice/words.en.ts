interface Bills {
  cars: string;
  left: string;
  filter: string;
  solenoids: string;
}
interface Part extends Bills {
  access: string;
  before: string;
  after: string;
  filterCosts: string;
  solenoidsCost: string;
  worth: string;
}

export const words = {
  title: 'Now or twice',
  controls: {
    access: 'Access, in and out again',
    left: 'Of 100 cars, come back with it left',
    renewed: 'Of 100 cars, come back with it renewed',
    extra: 'Extra labor while it is open',
    price: 'Price of the part, in your money',
    rate: 'An hour of your shop, in your money',
    beside: 'A comeback beside the hours: loaner, tow, name',
  },
  predict: {
    question: (p: Part) =>
      `It takes ${p.access} to get to the seal and out again. Two more parts lie open: a filter, ${p.filterCosts} with its labor, and a set of solenoids, ${p.solenoidsCost}. Say that renewing either takes its comebacks from ${p.before} to ${p.after} cars in 100. You do ${p.cars} such cars. Which one pays?`,
    options: {
      both: {
        words: 'Both. You are in there anyway.',
        why: (p: Part) =>
          `Being in there saves the ${p.access}, and only on the few cars that would have come back. That is worth ${p.worth} a car. The solenoids cost ${p.solenoidsCost}.`,
      },
      filter: {
        words: 'The filter, and the solenoids stay.',
        why: (p: Part) =>
          `Six cars fewer in 100, each ${p.access}: that is worth ${p.worth} a car. The filter costs ${p.filterCosts} and the solenoids ${p.solenoidsCost}.`,
      },
      neither: {
        words: 'Neither. The customer asked for a seal.',
        why: (p: Part) =>
          `Then ${p.cars} cars cost you ${p.left} in comebacks, where the filter would have brought it to ${p.filter} with its own cost in it.`,
      },
    },
    runLabel: 'Do twenty cars',
  },
  outcome: (p: Bills) =>
    `Left alone, ${p.cars} cars cost ${p.left} in comebacks. With the filter renewed it is ${p.filter} in all, with the solenoids ${p.solenoids}.`,
  picture: {
    left: (p: { cars: string }) => `${p.cars} cars, part left`,
    renewed: (p: { cars: string }) => `${p.cars} cars, part renewed`,
    notYet: '?',
    work: 'done on every car',
    comebacks: 'comebacks',
    describe: (p: { cars: string; left: string; work: string; comebacks: string }) =>
      `Two bars. ${p.cars} cars with the part left: ${p.left} of comebacks. With it renewed: ${p.work} of work on every car and ${p.comebacks} of comebacks.`,
    before: (p: { cars: string; left: string }) =>
      `${p.cars} cars with the part left cost ${p.left} in comebacks. What they cost with it renewed comes with the run.`,
  },
  says: {
    pays: (p: { costs: string; worth: string; cars: string; by: string }) =>
      `Costs ${p.costs} a car, is worth ${p.worth}: it pays. Over ${p.cars} cars you gain ${p.by}.`,
    even: (p: { costs: string }) => `Costs ${p.costs} a car and is worth as much: do as you like.`,
    loses: (p: { costs: string; worth: string; cars: string; by: string }) =>
      `Costs ${p.costs} a car, is worth ${p.worth}: it does not pay. Over ${p.cars} cars you lose ${p.by}.`,
    worse: (p: { costs: string }) =>
      `Costs ${p.costs} a car and brings more comebacks than it saves. Leave it.`,
  },
};
