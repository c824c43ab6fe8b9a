export const words = {
  title: 'Slips When Hot',
  subtitle: 'Why a clutch that holds cold lets go hot, and how to prove it',
  edition: (p: { version: string; date: string }) => `Version ${p.version}, ${p.date}`,
  units: { us: 'US units: psi, °F', si: 'Metric units: kPa, °C' },
  cover:
    'The training transmission in this book is invented. It is no maker’s, and none of its numbers is anybody’s specification.',
  safety:
    'Hot fluid burns. Pressure and air injure. A vehicle can roll, in gear, in Neutral and in Park, and one that is raised can fall. Follow the maker’s service information and your local codes. Nothing in this book replaces them, or a licensed trade.',
  free: 'Free and open source under the MIT license.',
  how: {
    title: 'How to use this book',
    text: [
      'Each lesson takes about a quarter of an hour on screen, and on paper it takes about the same. It opens with a car in the bay and ends with work of your own. Read them in order the first time, because each one leans on those before it.',
      'Where the screen has a simulation, the book has its picture after a run, with the numbers behind it. The question that is asked before the run stands above the picture. Cover the picture, say what you expect, and then look: a guess that turns out wrong is the one you remember.',
      'On the charts cold is dashed and hot is solid. A clutch that holds has a filled band, and one that slips has a hatched band, so a copier takes nothing away.',
      'The answers to “Your turn” stand right under each task, so keep a hand over them. The questions at the end of a lesson are numbered, and the key to all of them is at the end of the book.',
      'A name in square brackets, as [ASTM D341, table 2], is where a number or a law comes from. The sources at the end say what each one is and how much of it we have read ourselves.',
      'Anything that can be pressed on screen is left out here: the planner, the job sheets, the log reader and the practice cases. A path in brackets, as (/measure/), is a page of the site. Type it after the address that the shop uses for the site.',
      'In the file, page numbers and the list of contents are links.',
    ],
  },
  contents: 'Contents',
  key: {
    title: 'Key to the questions',
    lead: 'The right answer to each question with the reason for it. Why each of the others is wrong is told on screen.',
    of: (p: { lesson: string; title: string }) => `Lesson ${p.lesson}: ${p.title}`,
  },
  lesson: (p: { number: string; title: string }) => `${p.number}. ${p.title}`,
  keyAt: (p: { page: string }) => `The key to these questions begins on page ${p.page}.`,
  page: (p: { page: string }) => `page ${p.page}`,
  ask: 'Before the run',
  run: 'A simulation, printed as it stands after its run. On the site you can move it.',
  made: (p: { file: string; pages: string; megabytes: string; seconds: string }) =>
    `${p.file}: ${p.pages} pages, ${p.megabytes} MB, in ${p.seconds} s`,
  reading: (p: { chapter: string }) => `   ${p.chapter}`,
  refuse: {
    unknown: (p: { option: string }) =>
      `"${p.option}" is no option of the book. It takes --paper letter or a4, --units us or si, --lessons 1-3,7 and --out FILE.`,
    paper: (p: { given: string }) =>
      `--paper is "${p.given}". The book prints on "letter" or on "a4".`,
    units: (p: { given: string }) =>
      `--units is "${p.given}". It is "us" for psi and °F, or "si" for kPa and °C.`,
    lessons: (p: { given: string; most: string }) =>
      `--lessons is "${p.given}". Give numbers from 1 to ${p.most} with commas, or from one to another, as in 1-3,7.`,
    out: (p: { given: string }) => `--out is "${p.given}". The file has to end in .pdf.`,
    noFolder: (p: { file: string; why: string }) => `${p.file} could not be written: ${p.why}.`,
    noSite: 'There is no built site in dist. Run "npm run build" first; the book is made of it.',
    noPage: (p: { address: string }) =>
      `The built site has no ${p.address}. Run "npm run build" and make the book again.`,
    noDate:
      'The book carries the date of its version, and this folder has no git history to take it from. Set SOURCE_DATE_EPOCH to the seconds since 1970.',
    epoch: (p: { given: string }) =>
      `SOURCE_DATE_EPOCH is "${p.given}". It has to be a whole number of seconds since 1970.`,
    noChromium:
      'The book is printed by Chromium, and none was found. Install one, or set CHROMIUM_PATH to one.',
    oldChromium: (p: { version: string; least: string }) =>
      `This Chromium is version ${p.version}. Page numbers at the foot of a page need ${p.least} or newer. Update it, or set CHROMIUM_PATH to a newer one.`,
    unsettled: (p: { passes: string }) =>
      `After ${p.passes} printings the page numbers still move. This is a fault of the book: report it with the options you gave.`,
  },
};
