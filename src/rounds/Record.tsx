import { useEffect, useState } from 'preact/hooks';
import type { BankIndex } from '../quiz/bank-index.ts';
import { byLesson, calibrationOf, dayByDay } from '../quiz/record.ts';
import { dayOf } from '../quiz/schedule/day.ts';
import { readAnswers } from '../storage/answers.ts';
import type { AnswersRead } from '../storage/read-answers.ts';
import { answeredFrom, retrievalsOf } from '../widgets/retrieval/answered.ts';
import { Faults } from './Faults.tsx';
import { loadIndex, type Miss } from './load.ts';
import { Missed } from './Missed.tsx';
import { Days, Lessons, ReadNext, Sure } from './RecordTables.tsx';
import { words } from './record-words.en.ts';

interface Got {
  readonly index: BankIndex;
  readonly read: AnswersRead;
}

/** @param base the folder that the site stands in */
export function Record({ base }: { readonly base: string }) {
  const [got, setGot] = useState<Got | Miss | undefined>(undefined);
  const look = async (): Promise<void> => {
    setGot(undefined);
    const [index, read] = await Promise.all([loadIndex(base), readAnswers()]);
    setGot('miss' in index ? index.miss : { index: index.got, read });
  };
  useEffect(() => void look(), []);
  if (got === undefined) return <p role="status">{words.reading}</p>;
  if (typeof got === 'string') return <Missed miss={got} again={() => void look()} />;
  return <Told {...got} />;
}

const minutesWest = (at: number): number => new Date(at).getTimezoneOffset();

function Told({ index, read }: Got) {
  const answers = answeredFrom(retrievalsOf(read), minutesWest);
  if (answers.length === 0) {
    return (
      <>
        <Faults read={read} />
        <p>{words.none}</p>
        <p>
          <a class="way" href="/practise/today/">
            {words.toToday}
          </a>
        </p>
      </>
    );
  }
  const now = Date.now();
  const lessons = byLesson(index.items, answers, dayOf(now, minutesWest(now)));
  const titles = new Map(index.lessons.map(({ id, title }) => [id, title]));
  const asked = new Set(answers.map(({ item }) => item));
  return (
    <div class="record">
      <Faults read={read} />
      <p>
        {words.summary({
          answers: String(answers.length),
          questions: String(index.items.filter(({ id }) => asked.has(id)).length),
          all: String(index.items.length),
        })}
      </p>
      <ReadNext records={lessons} titles={titles} />
      <Lessons records={lessons} titles={titles} />
      <Sure rows={calibrationOf(answers)} />
      <Days days={dayByDay(answers)} />
      <button type="button" class="quiet no-print" onClick={() => print()}>
        {words.print}
      </button>
    </div>
  );
}
