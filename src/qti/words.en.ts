/** What a question says in another system besides its own words, and why a package is refused. */
export const words = {
  /** `unit` is empty for a plain number. */
  answerIn: (p: { unit: string }) =>
    p.unit === '' ? 'Your answer, as a number:' : `Your answer in ${p.unit}, as a number alone:`,
  severalFit: 'More than one answer fits.',
  right: 'Right.',
  allRight: 'Right, all of them.',
  notThatOne: 'Not that one.',
  notAll: 'Not quite. Compare what you ticked with what fits.',
  tooHigh: 'Not that. It is too high.',
  tooLow: 'Not that. It is too low.',
  byMistake: (p: { mistake: string }) =>
    `Not that. This is the number you get if you ${p.mistake}.`,
  ifYou: (p: { mistake: string }) => `You get this if you ${p.mistake}.`,
  notThatOrder: 'Not in that order.',
  notAllPairs: 'Not quite. Compare your pairs with these.',
  putInOrder: 'Put the steps in order, the first one on top.',
  /** The place of a step; two that may swap share theirs. */
  step: (p: { from: string; to: string }) =>
    p.from === p.to ? `Step ${p.from}:` : `Step ${p.from} to ${p.to}, in either order:`,
  pair: 'Pair:',
  goesWith: 'goes with',
  goesWithNothing: 'Goes with nothing:',
  beforeAll: 'Before step 1',
  after: (p: { step: string }) => `After step ${p.step}`,
  thisStep: 'This is the one:',
  stepIsRight: 'This step is right:',
  missing: 'This step is missing:',
  asTable: 'The same in numbers',
  openReadings:
    'Open the readings that you would pay for, and add up their minutes. They count from the car as it came in, and a gauge or a warm-up that two readings share is paid for once.',
  /** After the name of a reading. */
  alone: (p: { minutes: string }) => ` (${p.minutes} min on its own)`,
  whatIsIt: 'Then name what it is.',
  cheapest: (p: { minutes: string }) => `The cheapest readings that decide take ${p.minutes} min.`,
  decides: 'One of the cheapest:',
  leftOut: 'You can leave this out:',
  fits: 'Fits:',
  fitsNot: 'Does not fit:',
  bank: {
    title: 'Holds cold, slips hot: questions',
    about:
      'Questions of a training site about one automatic-transmission fault. Values belong to its training transmission; on a real car the maker’s service information decides.',
    rights: 'MIT license. Copyright the contributors.',
    objectives: 'Objectives of the lessons',
  },
  command: {
    help: 'Reads a QTI 3.0 package that this site wrote, and prints its questions as JSON. Usage: npm run -s qti -- read questions.zip',
    noFile: (p: { file: string; why: string }) => `${p.file} cannot be read: ${p.why}.`,
  },
  refused: {
    unreadable: 'The package cannot be read. No file of ours is built as this one is.',
    huge: (p: { most: string }) => `The file is larger than ${p.most}. No package of ours is.`,
    notZip: 'The file is no zip file, or it is cut off. A package is a zip file.',
    noManifest:
      'The zip file has no imsmanifest.xml at its top, so it is no QTI package. If it holds a folder, zip what is in the folder.',
    notXml: (p: { file: string; why: string }) =>
      `The file ${p.file} is not XML that can be read: ${p.why}.`,
    notQti: 'The imsmanifest.xml is not that of a QTI 3.0 package.',
    missing: (p: { file: string }) => `The package names ${p.file}, and the file is not in it.`,
    foreign:
      'The package was not written by this site. Only what this site wrote can be read back, because its questions explain every answer.',
    part: (p: { file: string; what: string }) => `${p.file} lacks ${p.what}.`,
    kind: (p: { kind: string; kinds: string }) =>
      `A question is of the kind “${p.kind}”. Kinds that can be read are ${p.kinds}.`,
    question: (p: { why: string }) => `A question of the package cannot be used. ${p.why}`,
    stray: (p: { file: string }) => `The package holds ${p.file}, which does not belong in it.`,
    changed: (p: { file: string; version: string; there: string; expected: string }) =>
      `The file ${p.file} is not as version ${p.version} of this site wrote it: it says “${p.there}” where “${p.expected}” belongs. Export the questions again.`,
    noSystem: 'The package does not say whether its amounts are US or metric.',
  },
};
