/** A meeting as content/<language>/meetings keeps it; see the recipe in DEVELOPERS.md. Every message is a sentence. */
import { z } from 'zod';
import { id, list, strict, words } from '../quiz/schema-parts.ts';
import { LEVELS } from '../cases/made-key.ts';
import { LONGEST, MOST_OPTIONS } from '../storage/meetings/own-meeting.ts';
import { isStateLink, simulationOf } from './state-link.ts';

export { MOST_OPTIONS };

const MOST_LINES = 3;

const heading = words('The heading').max(LONGEST.heading, {
  error: `The heading has more than ${LONGEST.heading} characters, which is two lines on the wall.`,
});
const line = words('A line').max(LONGEST.line, {
  error: `A line on the wall has at most ${LONGEST.line} characters; what is longer belongs into the notes.`,
});
const lines = list('"lines"', line).max(MOST_LINES, {
  error: `A scene has at most ${MOST_LINES} lines; what else there is to say belongs into the notes.`,
});
/** What the foreman reads; the room does not see it. */
const notes = words('The notes of a scene', 40).max(LONGEST.notes, {
  error: `The notes of a scene have more than ${LONGEST.notes} characters, and nobody reads that while talking.`,
});

const state = (what: string) =>
  z
    .string({ error: `${what} is an address in quotes.` })
    .refine((href) => href.startsWith('/') && isStateLink(href), {
      error: (issue) =>
        `"${String(issue.input)}" is no address of a simulation's state. Copy one with "Copy a link to this state" under a simulation: /lessons/thin-gap-open-hole/?gap-or-hole=1~temp.90#gap-or-hole.`,
    });

const say = strict('A scene of the kind "say"', {
  kind: z.literal('say'),
  heading,
  lines: lines.min(1, { error: 'A scene of the kind "say" has one to three lines.' }),
  /** A drawing beside the lines, by its name in src/lessons/drawing-names.ts. */
  drawing: id('The drawing').optional(),
  notes,
});

const picture = strict('A scene of the kind "picture"', {
  kind: z.literal('picture'),
  heading,
  /** One of the two: a chart by its id in src/question-charts, or a drawing. */
  chart: id('The chart').optional(),
  drawing: id('The drawing').optional(),
  lines: lines.optional(),
  notes,
}).refine(({ chart, drawing }) => (chart === undefined) !== (drawing === undefined), {
  error: 'A scene of the kind "picture" has a "chart" or a "drawing", one of the two.',
});

const simulation = strict('A scene of the kind "simulation"', {
  kind: z.literal('simulation'),
  heading,
  /** The state that it opens with. */
  state: state('"state"'),
  /** The state that the next press runs it to. */
  run: state('"run"').optional(),
  lines: lines.optional(),
  notes,
}).refine(
  ({ state: from, run }) =>
    // What is no state at all is told where it stands.
    [from, run ?? from].some((one) => !isStateLink(one)) ||
    simulationOf(run ?? from) === simulationOf(from),
  { error: '"run" is a state of the same simulation as "state".', path: ['run'] },
);

const option = strict('An option of a vote', {
  text: words('The text of an option', 1).max(LONGEST.line, {
    error: `An option has at most ${LONGEST.line} characters.`,
  }),
  correct: z.boolean({ error: 'Every option says "correct": true or false.' }),
  /** Why it is right, or why not: what the wall says of it with the answer. */
  why: words('The explanation ("why") of an option', 15).max(LONGEST.why, {
    error: `The explanation ("why") of an option has at most ${LONGEST.why} characters; what else there is to say belongs into the notes.`,
  }),
});

const ask = strict('"ask"', {
  stem: words('The question ("stem")', 15),
  options: list('"options"', option)
    .min(2, { error: 'A vote has at least two options.' })
    .max(MOST_OPTIONS, { error: `A vote has at most ${MOST_OPTIONS} options, a key for each.` })
    .refine((all) => all.filter(({ correct }) => correct).length === 1, {
      error: 'Of the options of a vote one is correct, and only one.',
    }),
});

const vote = strict('A scene of the kind "vote"', {
  kind: z.literal('vote'),
  heading,
  /** One of the two: a question of the bank, or one of this meeting. */
  question: strict('"question"', {
    lesson: id('The lesson of the question'),
    id: id('The id of the question'),
  }).optional(),
  ask: ask.optional(),
  notes,
}).refine((scene) => (scene.question === undefined) !== (scene.ask === undefined), {
  error: 'A vote has a "question" of the bank or an "ask" of its own, one of the two.',
});

const practiceCase = strict('A scene of the kind "case"', {
  kind: z.literal('case'),
  heading,
  /** One of the two: a written case by its id, or a car drawn by the number of the week. */
  case: id('The case').optional(),
  week: z
    .literal(LEVELS, { error: `"week" is how hard the car is: ${LEVELS.join(', ')}.` })
    .optional(),
  lines: lines.optional(),
  notes,
}).refine((scene) => (scene.case === undefined) !== (scene.week === undefined), {
  error: 'A scene of the kind "case" has a "case" or a "week", one of the two.',
});

export const sceneSchema = z.discriminatedUnion(
  'kind',
  [say, picture, simulation, vote, practiceCase],
  { error: 'The kind of a scene is "say", "picture", "simulation", "vote" or "case".' },
);

export const meetingSchema = strict('A meeting', {
  title: words('The title').max(LONGEST.title, {
    error: `The title has more than ${LONGEST.title} characters.`,
  }),
  order: z
    .int({ error: '"order" is the place in the list, a whole number.' })
    .min(1, { error: '"order" begins at 1.' }),
  minutes: z
    .int({ error: '"minutes" is a whole number.' })
    .min(3, { error: 'A meeting has at least 3 minutes.' })
    .max(60, { error: 'A meeting has at most 60 minutes.' }),
  /** One sentence for the list and for search results. */
  about: words('"about"', 40).max(200, { error: '"about" has more than 200 characters.' }),
  /** What the room can do afterwards. */
  goal: words('"goal"', 20).max(240, { error: '"goal" has more than 240 characters.' }),
  /** What has to lie on the table, besides a screen. */
  needs: list('"needs"', words('A thing that is needed')).max(5, {
    error: '"needs" has at most five things.',
  }),
  /** The lesson behind it. */
  lesson: id('The lesson'),
  scenes: list('"scenes"', sceneSchema)
    .min(3, { error: 'A meeting has at least three scenes.' })
    .max(15, { error: 'A meeting has at most fifteen scenes.' }),
});

export type WrittenScene = z.infer<typeof sceneSchema>;
export type WrittenMeeting = z.infer<typeof meetingSchema>;
