/** Reads the log of answers. What cannot be read stays where it lies, is told of, and hides nothing else. */
import type { IDBPDatabase } from 'idb';
import * as z from 'zod/mini';
import { answerLog, type AnswerLog } from './answer-log.ts';
import { STORE, steps as ownSteps, type Step } from './answer-steps.ts';
import { storeStatus, type StoreStatus } from './connection.ts';
import type { Answer } from './answer.ts';

// The policy of the site forbids code made from text, and trying it would be reported as a breach.
z.config({ jitless: true });

export interface KeptAnswer {
  /** Counts up in the order the answers were given, whatever the clock said. */
  readonly n: number;
  /** What the device's clock said, in milliseconds of Unix time. */
  readonly at: number;
  /** The clock said an earlier time than at the entry before: somebody set it back, one time or the other was wrong. */
  readonly clockSetBack: boolean;
  readonly answer: Answer;
}

export interface AnswersRead {
  /** Other than `ok`: nothing could be read, and nothing is lost by it. */
  readonly status: StoreStatus;
  readonly answers: readonly KeptAnswer[];
  /** Entries that cannot be understood, as they lie there, for download. */
  readonly damaged: readonly { readonly n: number; readonly raw: unknown }[];
}

/** Two tabs write in the order of the database and not of the clock; browsers also round their clocks. */
const SLACK_MS = 2000;

const id = z.string().check(z.minLength(1));
const answerSchema: z.ZodMiniType<Answer> = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('retrieval'),
    lesson: id,
    item: id,
    seed: z.number(),
    variant: z.optional(id),
    given: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('chosen'), ids: z.array(id) }),
      z.strictObject({ kind: z.literal('typed'), text: z.string(), system: z.enum(['si', 'us']) }),
    ]),
    result: z.enum(['right', 'partial', 'wrong']),
    certainty: z.literal([1, 2, 3]),
  }),
  z.strictObject({
    kind: z.literal('prediction'),
    sim: id,
    option: id,
    confidence: z.enum(['guessing', 'fairly-sure', 'certain']),
    right: z.boolean(),
  }),
]);
const versionSchema = z.object({ v: z.int().check(z.positive()) });
const recordSchema = z.strictObject({ v: z.int(), at: z.number(), answer: answerSchema });

/** Throws on what is no record of this version after all steps. */
export function readRecord(raw: unknown, steps: readonly Step[] = ownSteps) {
  const { v } = z.parse(versionSchema, raw);
  const now = steps.slice(v).reduce((old, { record }) => record?.(old) ?? old, raw);
  return z.parse(recordSchema, now);
}

/** One by one where all at once fails: a browser gives up on the lot for one value that it cannot load. */
async function entries(database: IDBPDatabase): Promise<[number, unknown][]> {
  const keys = (await database.getAllKeys(STORE)).map(Number);
  try {
    const values: unknown[] = await database.getAll(STORE);
    // A tab may have added one between the two.
    return keys.map((n, i) => [n, values[i]]);
  } catch {
    return await Promise.all(
      keys.map(async (n): Promise<[number, unknown]> => [
        n,
        await database.get(STORE, n).catch(() => undefined),
      ]),
    );
  }
}

export async function readAnswers(
  log: AnswerLog = answerLog(),
  steps: readonly Step[] = ownSteps,
): Promise<AnswersRead> {
  const answers: KeptAnswer[] = [];
  const damaged: { n: number; raw: unknown }[] = [];
  try {
    for (const [n, raw] of await entries(await log.database())) {
      try {
        const { at, answer } = readRecord(raw, steps);
        const before = answers.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
        answers.push({ n, at, clockSetBack: at < before - SLACK_MS, answer });
      } catch {
        damaged.push({ n, raw });
      }
    }
    return { status: 'ok', answers, damaged };
  } catch (error) {
    return { status: storeStatus(error), answers: [], damaged: [] };
  } finally {
    await log.close();
  }
}
