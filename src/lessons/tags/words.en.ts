export const words = {
  /** Before the headings of a table, for the ear. */
  table: 'Table',
  caution: 'Caution',
  mistake: 'The mistake people make',
  recap: 'In short',
  tasks: 'Your turn',
  kinds: { finish: 'Finish', diagnose: 'Diagnose', decide: 'Decide' },
  deeper: (title: string) => `Go deeper: ${title}`,
  afterRun: {
    /** What the fold is called, shut and open. */
    title: 'What came out, and why',
    /** Behind that, while it is shut. */
    shut: 'Run it above, and this opens by itself. Or open it now.',
    /** In its place where no script runs, and it stands open. */
    without: 'Before you read on, say what you expect.',
  },
  solution: 'Show the answer, and why',
  glossary: 'See it in the glossary',
  /** Where the questions of a lesson are in English alone; the link leads to them. */
  questions: {
    elsewhere: 'The questions of this lesson are in English.',
    link: 'Answer them there',
  },
  /** The mark for what has no source: as a lesson writes it in brackets, and as a reader is told. */
  noSource: { words: 'common practice, no source', label: 'Common practice, no source' },
  /** Before the name of a source, for the ear. */
  source: 'Source:',
  engineTable: {
    names: {
      fluids: 'the fluids',
      controller: 'the controller',
      frost: 'frost',
      'air-test': 'the air test',
      'warm-up': 'warming up',
      faults: 'the faults',
      'apply-chart': 'what each gear applies',
      sheet: 'the sheet of a transmission',
    },
    heads: {
      fluids: ['Fluid', 'Values'],
      controller: ['What', 'Limit'],
      frost: ['Fluid at', 'Turbine stops after'],
      'air-test': ['What', 'Holds'],
      'warm-up': ['What', 'Value'],
      faults: ['Fault', 'What changes', 'Healthy to worst', 'What you see'],
      'apply-chart': ['Gear', 'Training transmission', 'Second transmission'],
      sheet: ['Key', 'What', 'Range', 'Training', 'Second'],
    },
  },
};
