interface Found {
  one: string;
  two: string;
  three: string;
}
interface Seal extends Found {
  aYear: string;
  days: string;
}

export const words = {
  title: 'Stock or order',
  controls: {
    keep: 'You keep',
    aYear: 'Used in a year',
    days: 'Days from the order to the shelf',
    price: 'Price of one, in your money',
  },
  predict: {
    question: (p: Seal) =>
      `You use ${p.aYear} seals a year, and an order takes ${p.days} days: one is used meanwhile, on the average. How many must you keep so that nine cars in ten find theirs?`,
    options: {
      one: {
        words: 'One, the average.',
        why: (p: Found) =>
          `Cars do not come at even steps. With one kept, ${p.one} cars in 100 find it. The next car finds the shelf bare whenever one is on its way.`,
      },
      two: {
        words: 'Two: one and a spare.',
        why: (p: Found) =>
          `Better, at ${p.two} in 100. But now and then two or three are used in a row, and one car in four still waits.`,
      },
      three: {
        words: 'Three: three times the average.',
        why: (p: Found) =>
          `${p.three} in 100 find it. The spare ones stand for the weeks in which two come at once. The average alone leaves most cars waiting.`,
      },
      more: {
        words: 'Four or more.',
        why: (p: Found) =>
          `Three do it already, at ${p.three} in 100. Each one after that lies there for a rare week.`,
      },
    },
    runLabel: 'Fill the shelf',
  },
  outcome: (p: Found) =>
    `One kept serves ${p.one} cars in 100, two serve ${p.two}, and three serve ${p.three}.`,
  picture: {
    used: 'used before the order comes',
    found: 'found on the shelf',
    waits: 'somebody waits',
    beyond: (p: { last: string }) => `${p.last}+`,
    share: (p: { share: string }) => `${p.share} in 100 find it`,
    hidden: '?',
    describe: (p: { keep: string; found: string }) =>
      `Columns: how likely it is that none, one, two or more are used before the order comes. With ${p.keep} kept, ${p.found} cars in 100 find the part on the shelf.`,
    before: 'Columns that come with the run: how many are used before the order comes.',
  },
  says: {
    none: (p: { wait: string; days: string }) =>
      `Keep none: all ${p.wait} cars a year wait, ${p.days} days each, and no money lies there.`,
    some: (p: { keep: string; found: string; wait: string; lying: string; money: string }) =>
      `Keep ${p.keep}: of 100 cars ${p.found} find it. ${p.wait} a year wait. On the average ${p.lying} lie there, ${p.money} of your money.`,
  },
};
