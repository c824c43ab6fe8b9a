export const words = {
  tasks: {
    deep: {
      words: (p: { costs: string; access: string }) =>
        `A connector sleeve costs ${p.costs} with its labor. It sits ${p.access} deep, and there it does not pay. Bury it deeper. At what access does it begin to pay?`,
      hint: 'Move the access until the two bars are of a length, and a little further.',
      after: (p: { costs: string; from: string; drop: string }) =>
        `${p.costs} is earned back from about ${p.from} on. The sleeve is the same, and so is its chance. What the access costs decides, and ${p.drop} in 100 of it is what the sleeve is worth.`,
    },
    pack: {
      words: (p: { costs: string; access: string; left: string; renewed: string }) =>
        `A clutch pack costs ${p.costs} in all, behind ${p.access} of access. A new one brings ${p.renewed} cars in 100 back. At ${p.left} in 100 the old one stays. At how many does it begin to pay?`,
      hint: 'Only the cars that come back with the old pack may move.',
      after: (p: { from: string }) =>
        `About ${p.from} in 100. A pack that measures right is nowhere near that, so it stays. A pack that has slipped hot for months may well be, so it goes in. Looking at it decides, and habit does not.`,
    },
    beside: {
      words: (p: { costs: string; worth: string; rate: string }) =>
        `A filter costs ${p.costs} a car and is worth ${p.worth} in hours. But this customer drives a delivery van, and a comeback takes a loaner and your name. Your hour is sold at ${p.rate}. What must a comeback cost beside the hours before the filter pays?`,
      hint: 'Move what a comeback costs beside the hours.',
      after: (p: { from: string; hours: string }) =>
        `From about ${p.from}, so ${p.hours} of labor that nobody can bill. Most shops forget that part and then do too little. Put in your own loaner, your own tow, and what a lost customer is worth to you.`,
    },
  },
  reached: {
    sum: (p: { costs: string; worth: string }) =>
      `Here it costs ${p.costs} and is worth ${p.worth}.`,
  },
};
