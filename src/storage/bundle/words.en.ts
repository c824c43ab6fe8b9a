const parts = {
  plan: 'plan for your exam',
  progress: 'list of lessons you have done',
  visits: 'list of practice cases',
  columns: 'list of log columns',
  settings: 'choice of units and of light or dark',
  rehearsal: 'rehearsal under way',
  rehearsed: 'list of rehearsals',
};

export const words = {
  parts,
  empty: 'That file is empty. Choose one that was saved from “Keep and move”.',
  tooLarge: (p: { limit: string }) =>
    `That file is larger than ${p.limit} MB, and nothing saved here grows to that. Choose one that was saved from “Keep and move”.`,
  notText: 'That file is not text. Choose one that was saved from “Keep and move”.',
  foreign:
    'That file comes from somewhere else. Choose one that was saved from “Keep and move”; its name ends in .json.',
  otherFile: {
    jobs: 'That file holds only job sheets. Take it in on the page of the job sheets.',
    transmissions:
      'That file holds only transmissions. Take it in on the page of your transmission.',
    meetings: 'That file holds only meetings. Take it in on the page of your own meetings.',
  },
  cutShort:
    'That file was saved here, but it is damaged or cut short. Save it once more on the other device, or look for another copy.',
  newer:
    'That file was saved by a later version of this site. Reload this page, then choose the file again.',
  strange: (p: { key: string }) =>
    `That file has an entry “${p.key}”, which no file saved here has. It may have been changed by hand. Look for another copy.`,
  damaged: (p: { what: string }) =>
    `That file was saved here, but its ${p.what} cannot be read. Save it once more on the other device, or look for another copy.`,
  inList: {
    answers: (p: { place: string; of: string }) => `answer ${p.place} of ${p.of}`,
    jobs: (p: { place: string; of: string }) => `job sheet ${p.place} of ${p.of}`,
    sheets: (p: { place: string; of: string }) => `transmission ${p.place} of ${p.of}`,
    meetings: (p: { place: string; of: string }) => `meeting ${p.place} of ${p.of}`,
  },
  lists: {
    answers: 'list of answers',
    jobs: 'list of job sheets',
    sheets: 'list of transmissions',
    meetings: 'list of meetings',
    parts: 'part with plan and progress',
  },
  name: 'name',
  written: 'date',
};
