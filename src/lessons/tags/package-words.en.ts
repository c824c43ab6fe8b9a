/** The questions for other systems: their files on the page of practice. */
export const words = {
  links: { us: 'Questions in US units', metric: 'Questions in metric units' },
  about: (p: { questions: string; lessons: string; size: string }) =>
    ` (${p.questions} questions of ${p.lessons} lessons, a zip file of ${p.size} kB)`,
};
