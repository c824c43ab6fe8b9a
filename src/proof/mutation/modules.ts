/** What is changed wrongly, and which tests are asked whether they notice: folders and files of tests/. */
interface Module {
  /** Those beside the code: quick, and they notice most. */
  readonly near: readonly string[];
  /** Asked about what those did not notice. */
  readonly far: readonly string[];
  /** How many changes are drawn of all there are. */
  readonly drawn: number;
}

const modules: Readonly<Record<string, Module>> = {
  engine: { near: ['engine', 'published'], far: ['car', 'diagnosis'], drawn: 120 },
  car: {
    near: ['car', 'widgets'],
    far: ['log', 'content/questions', 'content/variations'],
    drawn: 120,
  },
  quiz: {
    near: ['quiz'],
    far: ['qti', 'question-sheet', 'rounds', 'lessons', 'content/questions'],
    drawn: 120,
  },
  diagnosis: {
    near: ['diagnosis'],
    far: ['cases', 'planner', 'measure', 'own-sheet', 'solve', 'widgets/before-and-after/model'],
    drawn: 120,
  },
};

export const moduleNames: readonly string[] = Object.keys(modules);

function moduleOf(name: string): Module {
  const found = modules[name];
  if (found === undefined)
    throw new Error(`No such module: ${name}. There are ${moduleNames.join(', ')}.`);
  return found;
}
export const drawnOf = (name: string): number => moduleOf(name).drawn;
export const REACHES = ['near', 'far'] as const;
export type Reach = (typeof REACHES)[number];
export const testsOf = (name: string, reach: Reach): string[] =>
  moduleOf(name)[reach].map((where) =>
    where.includes('/') ? `tests/${where}.test.ts` : `tests/${where}/**/*.test.{ts,tsx}`,
  );

/** Words are read by people, and kept tables were written by a program: what is wrong in them, other proofs notice. */
export const LEFT_OUT = ['**/words.*.ts', '**/kept-*.ts'] as const;
