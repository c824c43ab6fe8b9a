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
  taken: {
    head: 'What is taken for granted.',
    model:
      'The answers to the first seven questions come from the course’s model of the car. The hours it stood change nothing there, and neither does the key; only a valve that fades, and causes that are not in the list, have been given a restart that helps at times.',
    customer: (p: { right: string; unsure: string; wrong: string }) =>
      `Here the customer says it as it is. The list cannot know that: it reckons that ${p.right} of answers are right, ${p.unsure} are “I can’t say” and ${p.wrong} are wrong (our assumption). So a name is never gone for good.`,
    bits: 'One bit halves a list of even chances, two bits leave a quarter. A question’s worth is what its answer tells on the average, reckoned before it is heard. An answer that surprises tells more.',
  },
};
