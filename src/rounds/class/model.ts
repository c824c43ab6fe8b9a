/** The state of the page of a class. Clock, files and network are handed in, so it runs in Node. */
import { computed, signal } from '@preact/signals';
import type { Varied } from '../../quiz/asked.ts';
import type { BankIndex } from '../../quiz/bank-index.ts';
import type { Learner } from '../../quiz/class/first-answers.ts';
import { itemStatistics } from '../../quiz/class/item-statistics.ts';
import { meetingTopics } from '../../quiz/class/meeting-topics.ts';
import { typedRule } from '../../quiz/class/typed-rule.ts';
import { variantNamed } from '../../quiz/pick-variant.ts';
import { byLesson } from '../../quiz/record.ts';
import type { QuestionSet } from '../../quiz/question-set.ts';
import { areas, type Area } from '../../quiz/rehearsal/blueprint.ts';
import { dayOf } from '../../quiz/schedule/day.ts';
import type { Loaded, Miss } from '../load.ts';
import type * as Reader from './take-file.ts';
import type { Member, MemberAnswer } from './take-file.ts';
import { words } from './words.en.ts';

export interface Around {
  readonly now: () => number;
  /** What `Date.prototype.getTimezoneOffset` says at a moment [min]. */
  readonly minutesWest: (at: number) => number;
  readonly loadIndex: () => Promise<Loaded<BankIndex>>;
  readonly loadSets: (lessons: readonly string[]) => Promise<Loaded<readonly QuestionSet[]>>;
}

export interface AreaRow {
  readonly area: Area;
  /** One for each member. */
  readonly cells: readonly { readonly asked: number; readonly solid: number }[];
}

/** Questions asked in an area before somebody is called strong in it, and the part of them that has to sit. */
const STRONG = { asked: 4, share: 0.75 };

export function classModel(around: Around) {
  const members = signal<readonly Member[]>([]);
  const said = signal<readonly string[]>([]);
  const index = signal<BankIndex | undefined>(undefined);
  const questions = signal<ReadonlyMap<string, Varied>>(new Map());
  const miss = signal<Miss | undefined>(undefined);
  const loaded = new Set<string>();
  let taken = 0;

  const withRule = (answer: MemberAnswer): MemberAnswer => {
    const { item, typed } = answer;
    const question = questions.value.get(item);
    if (typed === undefined || question === undefined) return answer;
    return { ...answer, ids: typedRule(variantNamed(question, typed.variant), typed.given) };
  };
  const nameOf = ({ name, number }: Member): string =>
    name ?? words.unnamed({ number: String(number) });
  const learners = computed<readonly Learner[]>(() =>
    members.value.map((one) => ({ name: nameOf(one), answers: one.answers.map(withRule) })),
  );
  const items = computed(() => itemStatistics(learners.value));
  const topics = computed(() => meetingTopics(index.value?.items ?? [], learners.value));
  const byArea = computed<readonly AreaRow[]>(() => {
    const bank = (index.value?.items ?? []).map(({ id, area }) => ({ id, lesson: area }));
    const now = around.now();
    const today = dayOf(now, around.minutesWest(now));
    const records = members.value.map(({ answers }) => {
      const days = answers.map((one) => ({
        ...one,
        day: dayOf(one.at, around.minutesWest(one.at)),
      }));
      return new Map(byLesson(bank, days, today).map((row) => [row.lesson, row]));
    });
    return areas.map((area) => ({
      area,
      cells: records.map((record) => {
        const { asked = 0, solid = 0 } = record.get(area) ?? {};
        return { asked, solid };
      }),
    }));
  });
  /** Who can show an area to the others: the strongest three of each. */
  const strong = computed(() =>
    byArea.value.flatMap(({ area, cells }) => {
      const names = cells
        .map(({ asked, solid }, at) => ({ at, asked, share: asked === 0 ? 0 : solid / asked }))
        .filter(({ asked, share }) => asked >= STRONG.asked && share >= STRONG.share)
        .sort((a, b) => b.share - a.share || b.asked - a.asked)
        .slice(0, 3)
        .flatMap(({ at }) => learners.value[at]?.name ?? []);
      return names.length === 0 ? [] : [{ area, names }];
    }),
  );

  /** Fetches the list of the bank and the questions of some lessons; what came before stays. */
  async function load(lessons: readonly string[]): Promise<void> {
    miss.value = undefined;
    if (index.peek() === undefined) {
      const got = await around.loadIndex();
      if ('miss' in got) miss.value = got.miss;
      else index.value = got.got;
    }
    const missing = lessons.filter((lesson) => !loaded.has(lesson));
    if (miss.peek() === undefined && missing.length > 0) {
      const sets = await around.loadSets(missing);
      if ('miss' in sets) miss.value = sets.miss;
      else {
        for (const lesson of missing) loaded.add(lesson);
        questions.value = new Map([
          ...questions.peek(),
          ...sets.got.flatMap((set) => set.questions.map((one) => [one.id, one] as const)),
        ]);
      }
    }
  }
  function put(file: string, text: string, reader: typeof Reader): string | undefined {
    const one = reader.takeFile(text, members.peek(), taken + 1);
    switch (one.kind) {
      case 'refused':
        return words.refused({ file, sentence: one.sentence });
      case 'empty':
        return words.empty({ file });
      case 'same':
        return words.same({ file, name: nameOf(one.as) });
      case 'fuller':
        members.value = members.peek().map((old) => (old === one.as ? one.member : old));
        return words.fuller({ file, name: nameOf(one.as) });
      case 'new':
        taken += 1;
        members.value = [...members.peek(), one.member];
        return undefined;
    }
  }

  return {
    ...{ members, said, index, questions, miss, items, topics, byArea, strong, nameOf },
    /** Fetches the list of the bank and the words of every question that somebody answered. */
    need: async (): Promise<void> => {
      if (index.peek() === undefined) await load([]);
      const lessons = new Map(index.peek()?.items.map(({ id, lesson }) => [id, lesson]));
      const asked = new Set(items.peek().flatMap(({ item }) => lessons.get(item) ?? []));
      if (index.peek() !== undefined) await load([...asked]);
    },
    take: async (files: readonly File[]): Promise<void> => {
      const sentences: string[] = [];
      const reader = await import('./take-file.ts').catch(() => undefined);
      if (reader === undefined) {
        said.value = [words.noReader];
        return;
      }
      for (const file of files) {
        const sentence = reader.tooLarge(file.size);
        const told =
          sentence === undefined
            ? put(file.name, await file.text(), reader)
            : words.refused({ file: file.name, sentence });
        if (told !== undefined) sentences.push(told);
      }
      said.value = sentences;
    },
    remove: (member: Member): void => {
      members.value = members.peek().filter((one) => one !== member);
    },
    rename: (member: Member, name: string): void => {
      const typed = name.trim();
      members.value = members
        .peek()
        .map((one) => (one === member ? { ...one, name: typed === '' ? null : typed } : one));
    },
  };
}

export type ClassModel = ReturnType<typeof classModel>;
