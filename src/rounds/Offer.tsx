import { SECONDS_EACH } from '../quiz/schedule/round.ts';
import { Faults } from './Faults.tsx';
import { Missed } from './Missed.tsx';
import type { TodayModel } from './model.ts';
import { words } from './words.en.ts';

/** What waits, and the one button that begins. */
export function Offer({ model }: { readonly model: TodayModel }) {
  const miss = model.miss.value;
  if (miss !== undefined) return <Missed miss={miss} again={() => void model.look()} />;
  if (!model.ready.value) return <p role="status">{words.reading}</p>;
  return (
    <>
      <Faults read={model.read.value} />
      {model.kept.value === undefined ? <Fresh model={model} /> : <Paused model={model} />}
      <p role="status">{model.loading.value ? words.loading : ''}</p>
    </>
  );
}

function Paused({ model }: { readonly model: TodayModel }) {
  const { round, done } = model.kept.value ?? { round: { items: [] }, done: 0 };
  return (
    <div class="retrieval-row">
      <button type="button" class="act" onClick={() => void model.goOn()}>
        {words.goOn({ place: String(done + 1), of: String(round.items.length) })}
      </button>
      <button type="button" class="quiet" onClick={model.drop}>
        {words.drop}
      </button>
    </div>
  );
}

function Fresh({ model }: { readonly model: TodayModel }) {
  const round = model.next.value;
  if (round.length === 0) return <p>{nothing(model)}</p>;
  const { due } = model.waits.value;
  const isDue = new Set(due.map(({ id }) => id));
  const comeBack = round.filter(({ id }) => isDue.has(id)).length;
  const said = { due: String(comeBack), fresh: String(round.length - comeBack) };
  const line =
    comeBack === 0
      ? words.onlyFresh(said)
      : comeBack === round.length
        ? words.onlyDue(said)
        : words.waits(said);
  const more = due.length - comeBack;
  const minutes = Math.max(1, Math.round((round.length * SECONDS_EACH) / 60));
  return (
    <>
      <p class="today-waits">
        <strong>{line}</strong> {words.lasts({ minutes: String(minutes) })}{' '}
        {more > 0 && words.more({ more: String(more) })}
      </p>
      <button type="button" class="act today-begin" onClick={() => void model.begin()}>
        {words.begin}
      </button>
      {model.beginner.value && <p class="muted">{words.beginners}</p>}
    </>
  );
}

function nothing(model: TodayModel): string {
  const exam = model.exam.value;
  if (exam !== undefined && exam <= model.day.value) return words.exam.over;
  const days = model.nextIn.value;
  if (days !== undefined) {
    const { later, tomorrow, inDays } = words.nothing;
    return later({ when: days === 1 ? tomorrow : inDays({ days: String(days) }) });
  }
  return exam === undefined ? words.nothing.never : words.nothing.beforeExam;
}
