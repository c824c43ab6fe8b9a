/** Retrieval with the lesson out of sight. While it runs, <html> carries `lesson-covered`; retrieval.css hides the rest. */
import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { Varied } from '../../quiz/asked.ts';
import type { QuestionSet } from '../../quiz/question-set.ts';
import { keepAt } from '../../ui/keep-at.ts';
import { NotKept } from '../../ui/NotKept.tsx';
import { useReady } from '../../ui/use-units.ts';
import { Ask } from './Ask.tsx';
import { Explain } from './Explain.tsx';
import { keepRound, type LeftRound } from './left-round.ts';
import { retrievalModel, type RetrievalModel } from './model.ts';
import { Over } from './Over.tsx';
import { words } from './player/words.en.ts';

export interface RetrievalProps {
  readonly lesson: string;
  readonly questions: readonly Varied[];
  readonly objectives: QuestionSet['objectives'];
  /** Fixed in tests; on a page each start shuffles anew. */
  readonly seed?: number | undefined;
  /** True where the reader has pressed start before this was loaded: the first question is then on show at once. */
  readonly begun?: boolean;
  /** A round that was begun on an earlier visit: start goes on with it. */
  readonly left?: LeftRound | undefined;
}

export function Retrieval(props: RetrievalProps) {
  const { lesson, questions, objectives, seed, begun = false, left } = props;
  const id = `retrieval-${lesson}`;
  const model = useMemo(() => {
    const made = retrievalModel(questions, (counted) => {
      void keepAt(id, { kind: 'retrieval', lesson, ...counted });
    });
    if (begun) begin(made, left);
    return made;
  }, [questions]);
  const ready = useReady();
  const root = useRef<HTMLDivElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const stage = model.stage.value;
  const covered = model.covered.value;
  const asked = model.question.value;

  useLayoutEffect(() => {
    document.documentElement.classList.toggle('lesson-covered', covered);
    return () => document.documentElement.classList.remove('lesson-covered');
  }, [covered]);

  useEffect(() => {
    if (!covered) return;
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && !event.defaultPrevented) model.uncover();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [covered, model]);

  // The page changes length under the reader: put eyes and keyboard where the next thing is.
  const step = `${stage} ${asked?.id ?? ''}`;
  const shown = useRef(begun ? '' : step);
  useLayoutEffect(() => {
    if (shown.current === step) return;
    shown.current = step;
    root.current?.scrollIntoView({ block: 'start' });
    heading.current?.focus({ preventScroll: true });
  }, [step]);

  useEffect(() => {
    if (stage === 'over') keepRound(lesson);
  }, [stage]);

  const start = (): void => begin(model);
  const last = model.last.value;
  const session = model.session.value;
  const before = left?.answers.length ?? 0;
  // Said at the first question after a round was taken up, and not of a round begun since.
  const tookUp = before > 0 && session?.seed === left?.seed && session?.answers.length === before;

  return (
    <div class="retrieval-panel" ref={root}>
      <h3 ref={heading} tabIndex={-1} id={`${id}-head`}>
        {headline()}
      </h3>
      {stage === 'offered' && (
        <button type="button" class="act" disabled={!ready} onClick={start}>
          {words.start}
        </button>
      )}
      {stage === 'paused' && (
        <div class="retrieval-row">
          <button type="button" class="act" onClick={model.carryOn}>
            {words.carryOn}
          </button>
          <button type="button" class="quiet" onClick={start}>
            {words.startAgain}
          </button>
        </div>
      )}
      {stage === 'asking' && tookUp && (
        <p class="retrieval-row">
          {words.tookUp}
          <button type="button" class="quiet" onClick={start}>
            {words.startAgain}
          </button>
        </p>
      )}
      {stage === 'asking' && asked !== undefined && (
        <Ask key={asked.id} model={model} asked={asked} id={id} />
      )}
      {stage === 'explained' && last !== undefined && <Explain model={model} answer={last} />}
      {stage === 'over' && session !== undefined && model.summary.value !== undefined && (
        <>
          <Over
            summary={model.summary.value}
            session={session}
            objectives={objectives.map((one) => ({ ...one, href: `#${one.section}` }))}
          />
          <button type="button" class="act" onClick={start}>
            {words.others}
          </button>
        </>
      )}
      <NotKept place={id} />
    </div>
  );

  function begin(made: RetrievalModel, again?: LeftRound): void {
    const at = again?.seed ?? seed ?? Date.now();
    const items = made.start(at, again?.items);
    made.takeUp(again?.answers ?? []);
    keepRound(lesson, { seed: at, items });
  }

  function headline(): string {
    if (stage === 'offered') return words.stayed;
    if (stage === 'over') return words.over;
    const said = { paused: words.paused, asking: words.asking, explained: words.answered }[stage];
    return said(String(model.place.value), String(session?.questions.length ?? model.count));
  }
}
