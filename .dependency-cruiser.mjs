// Imports point one way. dependency-cruiser reads .ts, .tsx and .mjs; it cannot read .astro files,
// so src/build/astro-imports.ts holds the same rules, imported from here, against every .astro file.

/** @type {{ name: string, comment: string, from: string, mayReach: string[], npm: boolean }[]} */
export const folders = [
  {
    name: 'engine-is-arithmetic',
    comment:
      'The engine imports nothing outside itself, npm included: then a formula can be read, checked and run on its own, in any place that runs ECMAScript.',
    from: 'src/engine',
    mayReach: [],
    npm: false,
  },
  {
    name: 'quantity-stands-alone',
    comment:
      'Units, digits and the reading of what people type are one matter for the whole site, whatever shows them: so they lean on nothing, not even on the engine, whose factors a test compares.',
    from: 'src/quantity',
    mayReach: [],
    npm: false,
  },
  {
    name: 'shop-is-arithmetic',
    comment:
      'What a shop’s time and money come to is arithmetic on its own figures; no physics, no page.',
    from: 'src/shop',
    mayReach: [],
    npm: false,
  },
  {
    name: 'car-asks-the-engine',
    comment:
      'What a car is asked, and what its parts are called, is said once, so that two pages cannot answer differently.',
    from: 'src/car',
    mayReach: ['src/engine', 'src/quantity'],
    npm: false,
  },
  {
    name: 'numbers-ask-the-car',
    comment:
      'A number of the course is an answer of the car or the engine, or of the list of faults, with its name and its quantity; who prints it, and in what sentence, is not its business.',
    from: 'src/numbers',
    mayReach: ['src/engine', 'src/car', 'src/shop', 'src/diagnosis', 'src/cases', 'src/quantity'],
    npm: false,
  },
  {
    name: 'variations-ask-the-car',
    comment:
      'What a question that varies has in one setting is an answer of the car or the engine, like a number of the course; which of them are asked is drawn here, in what words is not known here.',
    from: 'src/variations',
    mayReach: ['src/engine', 'src/car', 'src/shop', 'src/numbers', 'src/quantity', 'src/quiz'],
    npm: false,
  },
  {
    name: 'log-is-pure',
    comment:
      'What a scan log shows must be found without a page, in a worker and in Node alike; a kept library reads the separated values.',
    from: 'src/log',
    mayReach: ['src/engine', 'src/car', 'src/quantity'],
    npm: true,
  },
  {
    name: 'planner-serves-pages',
    comment:
      'What a test is called, its caution, the form for a reading and what is said of it serve every page that plans tests: the planner knows none of them.',
    from: 'src/planner',
    mayReach: [
      'src/engine',
      'src/car',
      'src/diagnosis',
      'src/quantity',
      'src/charts',
      'src/ui',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'own-sheet-serves-pages',
    comment:
      'A sheet of one’s own, its table and the choice of a transmission serve every page that reasons about one; it knows none of them.',
    from: 'src/own-sheet',
    mayReach: [
      'src/engine',
      'src/car',
      'src/diagnosis',
      'src/planner',
      'src/quantity',
      'src/ui',
      'src/storage',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'measure-joins',
    comment:
      'The tools of the measuring part put readings beside pictures, as simulations put physics; they know no page, no lesson and no simulation of one.',
    from: 'src/measure',
    mayReach: [
      'src/engine',
      'src/car',
      'src/log',
      'src/diagnosis',
      'src/planner',
      'src/own-sheet',
      'src/quantity',
      'src/charts',
      'src/drawings',
      'src/ui',
      'src/storage',
      'src/simulation',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'diagnosis-knows-only-the-engine',
    comment: 'What a reading means follows from the physics alone, never from how a page shows it.',
    from: 'src/diagnosis',
    mayReach: ['src/engine'],
    npm: false,
  },
  {
    name: 'cases-are-read-on-the-model',
    comment:
      'A practice case is words and a hidden fault; what its car reads is the engine’s answer by way of the tests of diagnosis.',
    from: 'src/cases',
    mayReach: ['src/engine', 'src/diagnosis'],
    npm: true,
  },
  {
    name: 'practice-joins',
    comment:
      'A practice case puts a car of src/cases beside pictures, words and the planner; it knows no lesson, no simulation of one and no other page.',
    from: 'src/practice',
    mayReach: [
      'src/engine',
      'src/car',
      'src/cases',
      'src/diagnosis',
      'src/planner',
      'src/quantity',
      'src/charts',
      'src/ui',
      'src/storage',
      'src/simulation',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'rounds-join',
    comment:
      'A round puts what the schedule finds due beside the questions and what the device keeps; it asks them as the lessons do, and knows no lesson and no page.',
    from: 'src/rounds',
    mayReach: [
      'src/quiz',
      'src/quantity',
      'src/ui',
      'src/storage',
      'src/language',
      'src/widgets/retrieval',
      'src/cases/car-of-the-day.ts',
      'src/cases/made-key.ts',
      'src/practice/case-address.ts',
    ],
    npm: true,
  },
  {
    name: 'question-charts-are-drawn-at-build',
    comment:
      'The chart of a question is the engine’s answer over a range, drawn as data before it travels; it knows no question and no page.',
    from: 'src/question-charts',
    mayReach: [
      'src/engine',
      'src/car',
      'src/diagnosis',
      'src/quantity',
      'src/charts',
      'src/quiz',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'question-sheets-join',
    comment:
      'A sheet for paper puts questions of src/quiz beside a form; it fetches them as a round does, draws their charts as it does, and knows no lesson and no page.',
    from: 'src/question-sheet',
    mayReach: [
      'src/quiz',
      'src/quantity',
      'src/ui',
      'src/language',
      'src/rounds/load.ts',
      'src/widgets/retrieval/address.ts',
      'src/widgets/retrieval/ChartDrawing.tsx',
    ],
    npm: true,
  },
  {
    name: 'question-cases-are-read-at-build',
    comment:
      'A short case of the questions costs and reads what diagnosis and the engine say; it knows no page.',
    from: 'src/question-cases',
    mayReach: [
      'src/engine',
      'src/car',
      'src/diagnosis',
      'src/quantity',
      'src/quiz',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'keeping-joins',
    comment:
      'The page that saves, takes in and deletes puts what storage does into words; it knows no answer from inside, no lesson and no page.',
    from: 'src/keeping',
    mayReach: ['src/quantity', 'src/quiz/schedule/day.ts', 'src/ui', 'src/storage', 'src/language'],
    npm: true,
  },
  {
    name: 'course-package-wraps',
    comment:
      'The course package wraps the built site and reports what the device keeps; no page of the site knows of it.',
    from: 'src/scorm',
    mayReach: [
      'src/storage',
      'src/build/elsewhere.ts',
      'src/build/escape.ts',
      'src/build/files-in.ts',
    ],
    npm: true,
  },
  {
    name: 'book-prints-the-site',
    comment:
      'The book prints the built site as it stands, in the order of the course; no page knows of it, and it knows no physics.',
    from: 'src/book',
    mayReach: ['src/build', 'src/lessons/course.ts', 'src/widgets/retrieval/words.en.ts'],
    npm: true,
  },
  {
    name: 'quiz-is-pure',
    comment:
      'Grading and scheduling must be testable without a screen, a clock or the physics; numeric keys are computed where questions are loaded and passed in.',
    from: 'src/quiz',
    mayReach: ['src/quantity'],
    npm: true,
  },
  {
    name: 'solve-joins-engine-and-diagnosis',
    comment: 'Instructors script it: it must answer without a browser or a built site.',
    from: 'src/solve',
    mayReach: ['src/engine', 'src/diagnosis', 'src/quantity'],
    npm: true,
  },
  {
    name: 'charts-know-no-physics',
    comment:
      'A chart that knows physics gets its own opinion of it: arrays in, SVG out. Tables and the units signal come from src/ui.',
    from: 'src/charts',
    mayReach: ['src/quantity', 'src/ui', 'src/language'],
    npm: true,
  },
  {
    name: 'drawings-know-no-physics',
    comment:
      'A drawing shows the state that it is given; the state comes from the model. Of the car it knows names alone.',
    from: 'src/drawings',
    mayReach: ['src/quantity', 'src/ui/still.ts', 'src/car/names'],
    npm: true,
  },
  {
    name: 'ui-knows-no-physics',
    comment: 'A slider serves a pressure and a price alike.',
    from: 'src/ui',
    mayReach: ['src/quantity', 'src/storage', 'src/language'],
    npm: true,
  },
  {
    name: 'language-stands-alone',
    comment: 'Whatever has words needs to know its language, so the language may need nothing.',
    from: 'src/language',
    mayReach: [],
    npm: false,
  },
  {
    name: 'storage-stands-alone',
    comment:
      'Everything may come to storage, so storage may come to nothing of ours. A kept library may do what a browser makes hard.',
    from: 'src/storage',
    mayReach: [],
    npm: true,
  },
  {
    name: 'simulation-knows-no-widget',
    comment:
      'What every simulation shares must serve the next one too: it knows the model by its givens, and no widget, page or lesson.',
    from: 'src/simulation',
    mayReach: ['src/engine', 'src/car', 'src/quantity', 'src/storage', 'src/ui', 'src/charts'],
    npm: true,
  },
  {
    name: 'widgets-join',
    comment:
      'Widgets are the one place where physics and pictures meet; they know no page, no lesson and no other widget.',
    from: 'src/widgets',
    mayReach: [
      'src/engine',
      'src/car',
      'src/shop',
      'src/diagnosis',
      'src/log',
      'src/cases',
      'src/planner',
      'src/own-sheet',
      'src/quantity',
      'src/quiz',
      'src/charts',
      'src/drawings',
      'src/ui',
      'src/storage',
      'src/simulation',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'qti-knows-only-questions',
    comment:
      'A question leaves for another system as it would be asked; lessons, pages and storage do not come into it. Kept libraries write XML and zip files.',
    from: 'src/qti',
    mayReach: ['src/quiz', 'src/quantity', 'src/language'],
    npm: true,
  },
  {
    name: 'meeting-is-pure',
    comment:
      'Scenes, steps, hands and the clock of a meeting are tested without a screen; what a scene points at is put in when the site is built.',
    from: 'src/meeting',
    mayReach: [
      'src/quiz',
      'src/quantity',
      'src/cases/made-key.ts',
      'src/storage/meetings/own-meeting.ts',
    ],
    npm: true,
  },
  {
    name: 'stage-joins',
    comment:
      'The stage puts scenes on a wall: questions, simulations and cars as they are elsewhere. It knows no lesson and no page.',
    from: 'src/stage',
    mayReach: [
      'src/meeting',
      'src/quiz',
      'src/cases',
      'src/practice',
      'src/widgets',
      'src/simulation',
      'src/drawings',
      'src/charts',
      'src/planner/before-test.css',
      'src/lessons/tags/drawing.css',
      'src/rounds/load.ts',
      'src/quantity',
      'src/ui',
      'src/storage',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'lessons-map-tags',
    comment:
      'Lessons turn the tags of the prose into components, and print the numbers of the course; they know no page.',
    from: 'src/lessons',
    mayReach: [
      'src/engine',
      'src/car',
      'src/numbers',
      'src/question-cases',
      'src/question-charts',
      'src/variations',
      'src/quantity',
      'src/quiz',
      'src/qti',
      'src/meeting',
      'src/cases/written.ts',
      'src/drawings',
      'src/ui',
      'src/widgets',
      'src/language',
    ],
    npm: true,
  },
  {
    name: 'layouts-frame',
    comment: 'A layout frames whatever it is given; what that is, is the page’s business.',
    from: 'src/layouts',
    mayReach: [
      'src/quantity',
      'src/ui',
      'src/storage',
      'src/styles',
      'src/language',
      'src/offline/start.ts',
    ],
    npm: true,
  },
  {
    name: 'stick-takes-what-was-built',
    comment:
      'The stick is the built site and little servers; it knows nothing of what is in the site.',
    from: 'src/stick',
    mayReach: ['src/build/pages.ts', 'src/build/files-in.ts'],
    npm: true,
  },
  {
    name: 'hosting-takes-what-was-built',
    comment:
      'A server’s configuration follows from the headers and the base of the built site alone.',
    from: 'src/hosting',
    mayReach: ['src/build'],
    npm: true,
  },
  {
    name: 'offline-knows-no-page',
    comment:
      'What stores the site runs beside every page, so it may know none of them; a kept library keeps the files.',
    from: 'src/offline',
    mayReach: ['src/storage', 'src/language'],
    npm: true,
  },
  {
    name: 'build-tools-stand-alone',
    comment:
      'Build scripts look at files and at dist, never into the site’s own code; they read which languages there are.',
    from: 'src/build',
    mayReach: ['.dependency-cruiser.mjs', 'src/language'],
    npm: true,
  },
];

const escape = (path) => path.replaceAll('.', '\\.');

export default {
  forbidden: [
    ...folders.map(({ name, comment, from, mayReach }) => ({
      name,
      comment,
      severity: 'error',
      from: { path: `^${from}/` },
      to: {
        path: '^(src|content|tests)/',
        pathNot: [from, ...mayReach].map((path) =>
          path.includes('.ts') ? `^${escape(path)}$` : `^${escape(path)}/`,
        ),
      },
    })),
    ...folders
      .filter(({ npm }) => !npm)
      .map(({ name, comment, from }) => ({
        name: `${name}-no-packages`,
        comment,
        severity: 'error',
        from: { path: `^${from}/` },
        to: {
          dependencyTypes: ['npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'unknown'],
        },
      })),
    {
      name: 'engine-no-node-modules',
      comment: 'The engine runs in the browser: no file system, no process.',
      severity: 'error',
      from: {
        path: '^src/(engine|quantity|numbers|variations|quiz|diagnosis|planner|own-sheet|log|measure|practice|charts|drawings|ui|storage|simulation|widgets|meeting|stage)/',
      },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-widget-imports-a-widget',
      comment:
        'A simulation must be changed or dropped without looking at the others; what two of them need belongs to the car or to src/simulation.',
      severity: 'error',
      from: { path: '^src/widgets/([^/]+)/' },
      to: {
        path: '^src/widgets/',
        pathNot: '^src/widgets/$1/',
      },
    },
    {
      name: 'no-circular',
      comment: 'Two files that need each other are one file, or hide a third.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'nothing-unresolvable',
      comment: 'An import that leads nowhere fails only when somebody opens that page.',
      severity: 'error',
      from: {},
      // astro:content and its like exist only inside Astro's build; .astro files resolve there too. mdast and xast are types alone.
      to: {
        couldNotResolve: true,
        pathNot: '^(astro:|virtual:)|^(mdast|xast)$|\\.astro$|\\?(raw|worker&url)$',
      },
    },
    {
      name: 'only-tests-import-tests',
      comment: 'What ships must not lean on what tests it.',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^tests/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    // astro/zod and its like are named in the package's own list of exports.
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
    },
  },
};
