/**
 * What each tag of a lesson takes and where it may stand. The one place that says so: the tags parse their props by it when
 * a page is drawn, and src/lessons/check holds every lesson against it before that, with file and line.
 */
import { z } from 'astro/zod';
import { measuredNames, stillDrawings } from './drawing-names.ts';

export interface TagForm {
  readonly props: z.ZodObject;
  /** In a line of text, or a block of its own with blank lines round it. */
  readonly stands: 'in a line' | 'alone';
  /** Whether words or other tags stand between <Tag> and </Tag>. */
  readonly holds: boolean;
  /** The tags it must stand directly in; "the lesson" is the top level. Anywhere, if left out. */
  readonly inside?: readonly string[];
}

/** The tables of the model's own data. */
export const engineTables = [
  'fluids',
  'controller',
  'frost',
  'air-test',
  'warm-up',
  'faults',
  'apply-chart',
  'sheet',
] as const;

const none = z.strictObject({});
const id = z.string().min(1);
const title = z.string().min(3);
const top = ['the lesson'];

const picture = { props: none, stands: 'alone', holds: false } as const;
const box = { props: none, stands: 'alone', holds: true } as const;

export const tagForms = {
  AfterRun: { ...box, props: z.strictObject({ of: id }), inside: ['Section'] },
  AskFirst: picture,
  BenchAir: picture,
  BeforeAndAfter: picture,
  Caution: box,
  ClutchPressure: picture,
  ControllerDiagram: picture,
  ControllerSees: picture,
  Drawing: {
    ...picture,
    props: z.strictObject({ of: z.enum([...measuredNames, ...stillDrawings]) }),
  },
  Engagement: picture,
  EngineTable: {
    ...picture,
    props: z.strictObject({ of: z.enum(engineTables) }),
  },
  Fluid: picture,
  FreezeFrame: picture,
  GapOrHole: picture,
  GaugeBench: picture,
  GoDeeper: {
    ...box,
    props: z.strictObject({ title }),
    inside: ['Section', 'AfterRun', 'Caution'],
  },
  HeatAndAir: picture,
  HoldingTorque: picture,
  JobCard: picture,
  LevelWindow: picture,
  Mistake: { ...box, inside: top },
  NextTest: picture,
  NowOrTwice: picture,
  Num: { props: z.strictObject({ id }), stands: 'in a line', holds: false },
  QuestionPackages: picture,
  Recap: { ...box, inside: top },
  Retrieval: { ...picture, props: z.strictObject({ lesson: id }), inside: top },
  SamplingTrap: picture,
  Section: { ...box, props: z.strictObject({ title, id: id.optional() }), inside: top },
  Solution: { ...box, inside: ['Task', 'Section'] },
  Src: {
    props: z.strictObject({ id, at: z.string().min(1).optional() }),
    stands: 'in a line',
    holds: false,
  },
  StallTorque: picture,
  StockOrOrder: picture,
  TestOrder: picture,
  ThreeChecks: picture,
  Sum: { props: z.strictObject({ of: z.string().min(1) }), stands: 'in a line', holds: false },
  Task: {
    ...box,
    props: z.strictObject({ kind: z.enum(['finish', 'diagnose', 'decide']), title }),
    inside: ['Tasks'],
  },
  Tasks: { ...box, inside: top },
  Term: { props: z.strictObject({ id }), stands: 'in a line', holds: true },
  TwoSeals: picture,
  TwoFilters: picture,
  TwoWays: picture,
  WarmUpDrive: picture,
  WhichRanges: picture,
  WholeCar: picture,
  WhoGoesHungry: picture,
  Wide: box,
} as const satisfies Record<string, TagForm>;

export type TagName = keyof typeof tagForms;
