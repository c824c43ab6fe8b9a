export const words = {
  table: {
    head: 'What each check makes of what is left.',
    caption: 'For each answer, the causes that would give it.',
    done: 'One name is left, so nothing more has to be asked.',
    end: 'No check here parts what is left. Say so on the job sheet, and say what opening it would show.',
    check: 'Check',
    says: 'If it says',
    leaves: 'it leaves',
  },
  quickest: (p: { minutes: string; first: string }) =>
    `For this complaint the quickest way takes ${p.minutes} on the average, and begins so: ${p.first}.`,
  taken: {
    head: 'What is taken for granted.',
    words:
      'Complaints, causes, answers and minutes are common practice, no source; your shop has others. Every cause weighs alike, and every check tells the truth. On a real car neither is so.',
    model:
      'Numbers in brackets come from the course’s model of the car: a lip hard through, a level and a filter that are late in the same frost, our split seal, worn rings, a valve that fades, a missing ball and an open plug. A second number is Reverse, the sister car, or the same tap hot. The rest is told in words.',
  },
};
