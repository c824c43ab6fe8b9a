import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { carried, judge, repairGaps, type Named } from '../cases/judge.ts';
import { pathOf, rolesOf, type Stage } from '../cases/path.ts';
import { drivesIn } from '../cases/visit.ts';
import { listOf } from '../quantity/lists.ts';
import type { Listed, WayTest } from '../planner/messages.ts';
import { printNumber } from '../quantity/language.ts';
import type { CaseModel } from './model.ts';
import { named, PlannersWay, YourWay } from './Ways.tsx';
import { words as said } from './outcome-words.en.ts';
import { words } from './words.en.ts';

interface Ways {
  readonly stages: readonly Stage[];
  readonly end: Listed;
  readonly planned: readonly WayTest[];
}

const list = (causes: readonly Named[]): string => listOf(causes.map(named));

/** What it was, what was said, and both ways through it. */
export function Outcome({ model }: { readonly model: CaseModel }) {
  const { bench } = model;
  const conclusion = model.conclusion.value;
  const roles = rolesOf(conclusion.causes, bench.causes);
  const ways = useSignal<Ways | null>(null);
  const failed = useSignal(false);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (model.justEnded()) title.current?.focus();
    let gone = false;
    const work = async () => {
      const { listFor, wayOn } = await import('./load-planner.ts');
      const { coldMorning, read, transmission: on } = bench;
      const { state } = model.standing.value;
      const end = await listFor({ on, readings: model.readings.value, state });
      const stages = pathOf(end.steps, model.steps.value, coldMorning, [...roles.keys()]);
      const planned = await wayOn(on, drivesIn(coldMorning).state, read);
      if (!gone) ways.value = { stages, end, planned };
    };
    work().catch(() => (failed.value = true));
    return () => {
      gone = true;
    };
  }, []);
  const { verdict, missed, accused, elsewhere } = judge(bench.causes, conclusion);
  const minutes = printNumber(Math.round(model.standing.value.minutes), 0);
  const gaps = repairGaps(bench, conclusion.repairs);
  const done = model.steps.value.map(({ what }) => what);
  const { story } = bench;
  const now = ways.value;
  return (
    <section class="case-part case-outcome" id="case-outcome" aria-label={said.title}>
      <h3 ref={title} tabIndex={-1}>
        {said.verdicts[verdict]({ minutes })}
      </h3>
      <p>
        <strong>{said.was({ causes: list(bench.causes) })}</strong> {story?.what}
      </p>
      {verdict !== 'solved' && <p>{said.you({ causes: list(conclusion.causes) })}</p>}
      {elsewhere.length > 0 && <p>{said.elsewhere}</p>}
      {verdict === 'part' && elsewhere.length === 0 && missed.length > 0 && (
        <p>{said.missed({ causes: list(missed) })}</p>
      )}
      {verdict === 'part' && elsewhere.length === 0 && accused.length > 0 && (
        <p>{said.accused({ causes: list(accused) })}</p>
      )}
      <h4>{said.repair.title}</h4>
      {gaps.missing.length === 0 && gaps.needless.length === 0 && <p>{said.repair.right}</p>}
      {gaps.missing.length > 0 && (
        <p>
          {said.repair.missing({ repairs: listOf(gaps.missing.map((one) => words.repairs[one])) })}
        </p>
      )}
      {gaps.needless.length > 0 && (
        <p>
          {said.repair.needless({
            repairs: listOf(gaps.needless.map((one) => words.repairs[one])),
          })}
        </p>
      )}
      {story && (
        <>
          <p>{story.together}</p>
          <h4>{said.popular.title}</h4>
          <p>{story.tempts}</p>
          <p>
            {said.popular.costs({
              hours: story.comeback.hours,
              words: story.comeback.words,
            })}
          </p>
          <h4>{said.takeaway}</h4>
          <p>{story.takeaway}</p>
          {story.lesson && (
            <p>
              <a href={story.lesson.href}>{said.lesson({ title: story.lesson.title })}</a>
            </p>
          )}
        </>
      )}
      {failed.value && <p role="status">{said.path.failed}</p>}
      {!failed.value && now === null && <p role="status">{said.path.working}</p>}
      {now !== null && (
        <>
          <YourWay model={model} stages={now.stages} end={now.end} roles={roles}>
            {said.carried[carried(conclusion, bench, now.end, done)]}
          </YourWay>
          <PlannersWay bench={bench} planned={now.planned} />
        </>
      )}
      <p class="case-after no-print">
        <a class="act" href="/practise/cases/">
          {said.next}
        </a>
        <button type="button" class="quiet" onClick={model.again}>
          {said.again}
        </button>
      </p>
    </section>
  );
}
