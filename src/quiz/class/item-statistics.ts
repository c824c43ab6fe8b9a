/**
 * How a question did in a class, by what classical test theory asks of it: how many had it right, whether those had it right who
 * had the rest right, and which wrong option drew whom. First answers alone count.
 */
import { correlation } from './correlation.ts';
import { firstAnswers, type ClassAnswer, type Learner } from './first-answers.ts';

/** Fewer answers than these say nothing of a share or of a correlation. */
export const ENOUGH_ANSWERS = 30;

export interface ItemStatistics {
  readonly item: string;
  readonly answers: number;
  readonly right: number;
  /** Wrong, and the learner was certain. */
  readonly certainAndWrong: number;
  /** The share that was right, from 0 to 1; undefined below `ENOUGH_ANSWERS`. */
  readonly p: number | undefined;
  /**
   * Between this question, 1 if right, and the learner's share of right ones among the others; undefined below
   * `ENOUGH_ANSWERS`, and where everybody or nobody had it right.
   */
  readonly itemRest: number | undefined;
  /** How often each option was chosen, by id. */
  readonly chosen: ReadonlyMap<string, number>;
}

const missed = ({ answers, right }: ItemStatistics): number => answers - right;
const isRight = ({ result }: ClassAnswer): boolean => result === 'right';

/**
 * The questions that somebody answered, the one first that most had wrong, and of even ones the one that fewer of those asked
 * had right.
 * @example itemStatistics([{ name: 'A', answers: [] }]) // []
 */
export function itemStatistics(learners: readonly Learner[]): readonly ItemStatistics[] {
  const firsts = learners.map(({ answers }) => firstAnswers(answers));
  const rights = firsts.map((first) => [...first.values()].filter(isRight).length);
  const items = new Set(firsts.flatMap((first) => [...first.keys()]));
  return [...items]
    .map((item): ItemStatistics => {
      const given = firsts.flatMap((first, at) => {
        const answer = first.get(item);
        return answer === undefined ? [] : { answer, others: first.size - 1, all: rights[at] ?? 0 };
      });
      const answers = given.length;
      const right = given.filter(({ answer }) => isRight(answer)).length;
      const enough = answers >= ENOUGH_ANSWERS;
      const pairs = given
        .filter(({ others }) => others > 0)
        .map(({ answer, others, all }) => {
          const one = Number(isRight(answer));
          return [one, (all - one) / others] as const;
        });
      const chosen = new Map<string, number>();
      for (const { answer } of given)
        for (const id of answer.ids) chosen.set(id, (chosen.get(id) ?? 0) + 1);
      return {
        item,
        answers,
        right,
        certainAndWrong: given.filter(({ answer }) => answer.certainty === 3 && !isRight(answer))
          .length,
        p: enough ? right / answers : undefined,
        itemRest: enough && pairs.length >= ENOUGH_ANSWERS ? correlation(pairs) : undefined,
        chosen,
      };
    })
    .sort((a, b) => missed(b) - missed(a) || a.right / a.answers - b.right / b.answers);
}
