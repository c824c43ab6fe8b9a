export const words = {
  tasks: {
    twice: {
      words: (p: { keep: string; aYear: string }) =>
        `Business doubles, and you use ${p.aYear} seals a year. With ${p.keep} kept, too many cars wait. Keep the fewest that serve nine cars in ten again.`,
      hint: 'Add one at a time and read how many of 100 find it.',
      after: (p: { before: string; enough: string }) =>
        `Twice the use asks for ${p.enough} and not for twice ${p.before}. The busier a part is, the fewer spares it needs for each one used.`,
    },
    nearer: {
      words: (p: { keep: string; days: string }) =>
        `The drawer holds ${p.keep} and no more. An order takes ${p.days} days. How quick must a supplier be so that nine cars in ten find it? Take the longest wait that does.`,
      hint: 'Move the days alone.',
      after: (p: { longest: string; keep: string; full: string }) =>
        `${p.longest} days. A supplier twice as quick saves you a seal on the shelf: with ${p.keep} you serve what took ${p.full} before. So before you buy more shelf, ask what the wait is made of.`,
    },
    pack: {
      words: (p: { aYear: string; days: string; price: string; keep: string }) =>
        `A pack of plates: ${p.aYear} used a year, ${p.price} each, ${p.days} days away. Somebody has put ${p.keep} on the shelf. Keep the fewest that serve nine cars in ten.`,
      hint: 'Take them away one by one.',
      after: (p: { found: string; money: string; over: string; wait: string }) =>
        `One serves ${p.found} in 100, and the other two kept ${p.over} of your money for next to nobody. Even that one is ${p.money} for ${p.wait} cars a year. If the pan tells you days before the car is apart, order it and keep none.`,
    },
  },
  reached: {
    found: (p: { found: string }) => `Here ${p.found} cars in 100 find it.`,
  },
};
