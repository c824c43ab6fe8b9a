/** The state of the page "Today". Clock, storage and network are handed in, so it runs in Node. */
import { computed, signal } from '@preact/signals';
import type { BankIndex, BankItem } from '../quiz/bank-index.ts';
import type { Asked, Varied } from '../quiz/asked.ts';
import { pickVariant, variantNamed } from '../quiz/pick-variant.ts';
import type { QuestionSet } from '../quiz/question-set.ts';
import { dayOf, type Day } from '../quiz/schedule/day.ts';
import { roundOf, SECONDS_EACH, waiting } from '../quiz/schedule/round.ts';
import { dueDay, knownFrom, type Answered } from '../quiz/schedule/schedule.ts';
import type { Keeper } from '../storage/envelope.ts';
import type { Plan, RoundKept, RoundMinutes } from '../storage/plan.ts';
import type { AnswersRead } from '../storage/read-answers.ts';
import type { RetrievalAnswer } from '../storage/answer.ts';
import { answersOfRound, underWay } from '../storage/round-under-way.ts';
import type { Counted, retrievalModel, RetrievalModel } from '../widgets/retrieval/model.ts';
import { answeredFrom, retrievalsOf } from '../widgets/retrieval/answered.ts';
import { readDay } from '../widgets/retrieval/read-day.ts';
import type { loadSets } from './load-sets.ts';
import type { Loaded, Miss } from './load.ts';

export interface Surroundings {
  readonly now: () => number;
  /** What `Date.prototype.getTimezoneOffset` says at a moment [min]. */
  readonly minutesWest: (at: number) => number;
  readonly keeper: Pick<Keeper<Plan>, 'read' | 'update'>;
  /** Lessons marked as done. */
  readonly done: () => readonly string[];
  readonly readAnswers: () => Promise<AnswersRead>;
  readonly keepAnswer: (answer: RetrievalAnswer) => void;
  readonly loadIndex: () => Promise<Loaded<BankIndex>>;
  /** What asks the questions; rejects if it cannot be had. */
  readonly loadPlayer: () => Promise<{
    readonly retrievalModel: typeof retrievalModel;
    readonly loadSets: typeof loadSets;
  }>;
  /** The folder that the site stands in. */
  readonly base: string;
}

/** Longest way to an exam that makes sense to plan [d]. */
const FARTHEST = 730;

export const questionsIn = (minutes: RoundMinutes): number =>
  Math.floor((minutes * 60) / SECONDS_EACH);

export function todayModel(around: Surroundings) {
  const today = (): Day => {
    const at = around.now();
    return dayOf(at, around.minutesWest(at));
  };
  const day = signal<Day>(today());
  const plan = signal<Plan>(around.keeper.read().data);
  const index = signal<BankIndex | undefined>(undefined);
  const read = signal<AnswersRead | undefined>(undefined);
  const miss = signal<Miss | undefined>(undefined);
  const loading = signal(false);
  const examFault = signal<'noDate' | 'tooSoon' | 'tooFar' | undefined>(undefined);
  const planNotKept = signal(false);
  /** Answers of this visit, which a browser that keeps nothing would forget. */
  const here = signal<readonly Answered[]>([]);
  const asking = signal<
    { readonly player: RetrievalModel; readonly sets: readonly QuestionSet[] } | undefined
  >(undefined);

  const retrievals = computed(() => retrievalsOf(read.value));
  const answered = computed<readonly Answered[]>(() => [
    ...answeredFrom(retrievals.value, around.minutesWest),
    ...here.value,
  ]);
  const known = computed(() => knownFrom(answered.value));
  const exam = computed(() => (plan.value.exam === null ? undefined : readDay(plan.value.exam)));

  /** Lessons whose questions take part: those that are done or were asked, the first for a beginner, all before an exam. */
  const open = computed<readonly BankItem[]>(() => {
    const items = index.value?.items ?? [];
    if (exam.value !== undefined) return items;
    const lessons = new Set(around.done());
    for (const { id, lesson } of items) if (known.value.has(id)) lessons.add(lesson);
    const [first] = items;
    if (first !== undefined && !items.some(({ lesson }) => lessons.has(lesson))) {
      lessons.add(first.lesson);
    }
    return items.filter(({ lesson }) => lessons.has(lesson));
  });
  const beginner = computed(
    () => exam.value === undefined && known.value.size === 0 && around.done().length === 0,
  );
  const waits = computed(() =>
    waiting(open.value, known.value, { today: day.value, exam: exam.value }),
  );
  const next = computed(() => {
    if (waits.value.due.length + waits.value.fresh.length === 0) return [];
    return roundOf(waits.value, known.value, questionsIn(plan.value.minutes));
  });
  /** Days until the next question comes back, if none is due. */
  const nextIn = computed(() => {
    const days = [...known.value.values()]
      .map((one) => dueDay(one, exam.value))
      .filter((due) => due !== undefined && due > day.value) as Day[];
    return days.length === 0 ? undefined : Math.min(...days) - day.value;
  });
  /** The round that was begun today and is not over, and how many of it were answered. */
  const kept = computed(() => underWay(plan.value.round, retrievals.value, day.value));

  /** The variant that the round has had of it already, or one that this learner has seen least. */
  function asAsked(
    question: Varied,
    { seed }: RoundKept,
    given: readonly RetrievalAnswer[],
  ): Asked {
    const now = given.find(({ item }) => item === question.id);
    const same = now && variantNamed(question, now.variant);
    if (same !== undefined) return same;
    const seen = retrievals
      .peek()
      .flatMap(({ answer }) =>
        answer.item === question.id && answer.seed !== seed ? [answer.variant] : [],
      );
    return pickVariant(question, seed, seen);
  }

  function setPlan(change: Partial<Plan>): void {
    const status = around.keeper.update((now) => ({ ...now, ...change }));
    plan.value = { ...plan.peek(), ...change };
    planNotKept.value = status !== 'ok';
  }

  async function look(): Promise<void> {
    miss.value = undefined;
    loading.value = true;
    const [got, answers] = await Promise.all([around.loadIndex(), around.readAnswers()]);
    loading.value = false;
    day.value = today();
    plan.value = around.keeper.read().data;
    if ('miss' in got) miss.value = got.miss;
    else index.value = got.got;
    read.value = answers;
    here.value = [];
  }

  async function ask(round: RoundKept): Promise<void> {
    miss.value = undefined;
    loading.value = true;
    const lessons = [...new Set(round.items.map(({ lesson }) => lesson))];
    const play = await around.loadPlayer().catch(() => undefined);
    const loaded = await (play?.loadSets(around.base, lessons) ?? { miss: 'stuck' as const });
    loading.value = false;
    if (play === undefined || 'miss' in loaded) {
      miss.value = 'miss' in loaded ? loaded.miss : 'stuck';
      return;
    }
    const byId = new Map(
      loaded.got.flatMap(({ lesson, questions }) =>
        questions.map((question) => [question.id, { lesson, question }] as const),
      ),
    );
    // A question that is gone since the round was begun is left out.
    const given = answersOfRound(round, retrievals.value);
    const questions = round.items.flatMap(({ id }): readonly Asked[] => {
      const question = byId.get(id)?.question;
      return question === undefined ? [] : [asAsked(question, round, given)];
    });
    const keep = (counted: Counted): void => {
      const lesson = byId.get(counted.item)?.lesson ?? '';
      around.keepAnswer({ kind: 'retrieval', lesson, ...counted });
      const { item, result, certainty } = counted;
      here.value = [...here.peek(), { item, result, certainty, day: today() }];
      // Whoever closes the page at "How it went" has finished the round all the same.
      if (asking.peek()?.player.session.peek()?.answers.length === questions.length) {
        setPlan({ round: null });
      }
    };
    if (questions.length === 0) {
      setPlan({ round: null });
      return;
    }
    const player = play.retrievalModel(questions, keep, 'all');
    player.start(round.seed);
    player.takeUp(given);
    asking.value = { player, sets: loaded.got };
  }

  return {
    ...{
      day,
      plan,
      exam,
      examFault,
      planNotKept,
      miss,
      loading,
      beginner,
      waits,
      next,
      nextIn,
      kept,
      read,
    },
    asking,
    index,
    look,
    /** True once the bank and the answers are here. */
    ready: computed(() => index.value !== undefined && read.value !== undefined),
    begin: async (): Promise<void> => {
      const round = {
        day: day.peek(),
        seed: around.now(),
        items: next.peek().map(({ id, lesson }) => ({ id, lesson })),
      };
      setPlan({ round });
      await ask(round);
    },
    goOn: async (): Promise<void> => {
      const now = kept.peek();
      if (now !== undefined) await ask(now.round);
    },
    drop: (): void => setPlan({ round: null }),
    /** Leaves the questions; the round waits if some of it is left. */
    leave: async (): Promise<void> => {
      const over = asking.peek()?.player.stage.peek() === 'over';
      asking.value = undefined;
      if (over) setPlan({ round: null });
      await look();
    },
    setMinutes: (minutes: RoundMinutes): void => setPlan({ minutes }),
    /** False if the date was refused; `examFault` says why. */
    setExam: (text: string): boolean => {
      const asked = readDay(text);
      examFault.value =
        asked === undefined
          ? 'noDate'
          : asked <= day.peek()
            ? 'tooSoon'
            : asked > day.peek() + FARTHEST
              ? 'tooFar'
              : undefined;
      if (examFault.peek() !== undefined) return false;
      setPlan({ exam: text });
      return true;
    },
    clearExam: (): void => {
      examFault.value = undefined;
      setPlan({ exam: null });
    },
  };
}

export type TodayModel = ReturnType<typeof todayModel>;
