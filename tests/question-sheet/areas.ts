import type { Area } from '../../src/question-sheet/choice.ts';

export const areas: readonly Area[] = [
  {
    id: 'why',
    title: 'Why it happens',
    lessons: [
      { id: 'one', title: 'The first', questions: 12 },
      { id: 'two', title: 'The second', questions: 10 },
    ],
  },
  {
    id: 'how',
    title: 'How to find it',
    lessons: [{ id: 'three', title: 'The third', questions: 30 }],
  },
];
export const lessons = areas.flatMap((area) => area.lessons);
