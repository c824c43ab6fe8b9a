export const words = {
  table: {
    head: 'How much speaks for each name.',
    caption:
      'Before the first answer all names weigh alike, and a cause that is not in the list twice that.',
    name: 'Name',
    share: 'Share',
    rest: (p: { count: string; share: string }) =>
      `${p.count} more names have less than ${p.share} each.`,
  },
  had: {
    head: (p: { it: string }) => `What this car has: ${p.it}.`,
    anyHeat: 'It does not wait for the fluid to warm up.',
    heat: (p: { from: string; road: string; minutes: string }) =>
      `It shows from ${p.from} on. The customer’s day: ${p.road} The fluid gets there after ${p.minutes}.`,
    notThatDay: (p: { from: string; road: string }) =>
      `It shows from ${p.from} on. The customer’s day: ${p.road} The fluid never gets that warm.`,
    question: 'Question',
    says: 'What the customer says',
    asked: 'You asked',
    yes: 'yes',
    no: 'no',
    alone:
      'With all nine asked it stands alone in front. Talk has done what it can, and a reading has to prove it.',
    level: (p: { others: string }) =>
      `With all nine asked, as high as it or higher: ${p.others}. Talk does not get past that. From here on it takes a reading.`,
  },
  taken: {
    head: 'What is taken for granted.',
    model:
      'The answers to the first seven questions come from the course’s model of the car. The hours it stood change nothing there, and neither does the key; only a valve that fades, and causes that are not in the list, have been given a restart that helps at times.',
    customer: (p: { right: string; unsure: string; wrong: string }) =>
      `Here the customer says it as it is. The list cannot know that: it reckons that ${p.right} of answers are right, ${p.unsure} are “I can’t say” and ${p.wrong} are wrong (our assumption). So a name is never gone for good.`,
    bits: 'One bit halves a list of even chances, two bits leave a quarter. A question’s worth is what its answer tells on the average, reckoned before it is heard. An answer that surprises tells more.',
  },
};
