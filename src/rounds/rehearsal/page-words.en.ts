/** Of the page as it is served, before a question is on show. */
export const words = {
  title: 'Rehearsal',
  description:
    'Fifty questions from the whole course, told at the end: a clock you can switch off, flags to come back to, and a result by area with what to read next.',
  lead: (p: { questions: string }) =>
    `${p.questions} questions from the whole course. Nothing is told until you hand in, and then every answer is explained.`,
  noScript:
    'This page needs a script to draw the questions. Without one, each lesson has its questions at its end.',
  toLessons: 'Go to the course',
  how: {
    title: 'How it goes',
    one: 'You get one question at a time. Leave it open, flag it, go back, change your answer: all of that is free until you hand in. A list shows which questions are answered, flagged and open.',
    sure: 'Say how sure you are with each answer, as in the lessons. An answer counts once it says so, because that is what sends the surest mistakes back to you first.',
    clock: (p: { minutes: string }) =>
      `The clock is set to ${p.minutes} minutes, which is our own figure. It runs only while a question or the list is on your screen, and you can switch it off. When the time is up you go on as you like, and nothing is taken from you.`,
    leave:
      'Leave the page whenever you have to. Answers, flags and clock wait on this device, and you go on where you stopped.',
  },
  counts: {
    title: 'What counts',
    right:
      'A question counts when all of it is right. Some of several answers are not enough, and a question that you leave open counts as not right. Your time, your flags and how often you changed your mind count for nothing.',
    log: 'Your answers join your record and your daily round, so what went wrong comes back to you there.',
  },
  mix: {
    title: 'What it is made of',
    own: 'This mix is our own proposal. It copies no examination, and a good result here promises nothing about one.',
    line: (p: { area: string; questions: string }) => `${p.area}: ${p.questions}`,
    next: 'The next rehearsal takes other questions. Those that you rehearsed lately come last.',
  },
  private: 'Your answers stay on this device. Nothing is sent.',
};
