export const words = {
  way: {
    head: 'Your way, test by test.',
    caption:
      'What each test was worth before you took it. Under it stands which one was best then, by halvings in ten minutes.',
    none: 'You have taken no test yet.',
    test: 'Test',
    minutes: 'Takes',
    worth: 'Halvings',
    rate: 'In ten minutes',
    same: 'The best then.',
    stop: 'Best then: stop.',
    other: (p: { test: string; rate: string }) => `Best then: ${p.test}, ${p.rate}.`,
  },
  left: {
    head: 'What is left to take.',
    caption: 'Most for its minutes first. What is in place already costs nothing again.',
    sure: 'One name is far above the rest, so none of these is needed to find it.',
    test: 'Test',
    minutes: 'Takes',
    worth: 'Halvings',
    rate: 'In ten minutes',
    nothing: 'nothing',
  },
  taken: {
    head: 'What is taken for granted.',
    list: 'The suspects are those of the planner on the Measure page, at every stage of wear from which a customer would notice. They weigh alike at first, and what is not in the list weighs twice as much. The customer named Drive, so a fault of one clutch sits in the forward clutch.',
    words:
      'Readings are told in words: on time is under one second, never is more than two and a half. A pressure has its command from 85 % of it. Minutes, and how often a reading errs, are assumptions of this site. The planner on the Measure page takes the numbers themselves, and 49 readings in place of these fifteen.',
    rule: 'Halvings are bits: what a test tells on the average, reckoned before it is taken. A reading that surprises tells more. Best then follows halvings for minutes, with one rule of the shop on top: codes, level, hot log and cable come before anything is opened. On a car each test has its caution, and those of this lesson hold for all of them.',
  },
};
