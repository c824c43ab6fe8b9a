/** What is changed wrongly, and which tests are asked whether they notice: folders and files of tests/. */
interface Module {
  /** Those beside the code: quick, and they notice most. */
  readonly near: readonly string[];
  /** Asked about what those did not notice. */
  readonly far: readonly string[];
  /** How many changes are drawn of all there are, and by which lot; another one once what the draw showed is mended. */
  readonly drawn: number;
  readonly seed: string;
}

const modules: Readonly<Record<string, Module>> = {
  engine: {
    near: ['engine', 'published'],
    far: ['car', 'diagnosis'],
    drawn: 120,
    seed: '2026-11-30, fourth draw',
  },
  car: {
    near: ['car', 'widgets'],
    far: ['log', 'content/questions', 'content/variations'],
    drawn: 120,
    seed: '2026-11-30, fourth draw',
  },
  quiz: {
    near: ['quiz'],
    far: ['qti', 'question-sheet', 'rounds', 'lessons', 'content/questions'],
    drawn: 120,
    seed: '2026-11-30, fourth draw',
  },
  diagnosis: {
    near: ['diagnosis'],
    far: ['cases', 'planner', 'measure', 'own-sheet', 'solve', 'widgets/before-and-after/model'],
    drawn: 240,
    seed: '2026-11-30, sixth draw',
  },
};

export const moduleNames: readonly string[] = Object.keys(modules);

function moduleOf(name: string): Module {
  const found = modules[name];
  if (found === undefined)
    throw new Error(`No such module: ${name}. There are ${moduleNames.join(', ')}.`);
  return found;
}
export const lotOf = (name: string): Pick<Module, 'drawn' | 'seed'> => moduleOf(name);
export const REACHES = ['near', 'far'] as const;
export type Reach = (typeof REACHES)[number];
export const testsOf = (name: string, reach: Reach): string[] =>
  moduleOf(name)[reach].map((where) =>
    where.includes('/') ? `tests/${where}.test.ts` : `tests/${where}/**/*.test.{ts,tsx}`,
  );

/** Words are read by people, and kept tables were written by a program: what is wrong in them, other proofs notice. */
export const LEFT_OUT = ['**/words.*.ts', '**/kept-*.ts'] as const;
