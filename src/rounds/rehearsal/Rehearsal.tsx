import { effect } from '@preact/signals';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { readAnswers } from '../../storage/answers.ts';
import { pastKeeper, underWayKeeper } from '../../storage/rehearsals.ts';
import { faultAt, keepAt } from '../../ui/keep-at.ts';
import { NotKept } from '../../ui/NotKept.tsx';
import { useReady } from '../../ui/use-units.ts';
import { units } from '../../ui/units-signal.ts';
import { loadIndex } from '../load.ts';
import { Before } from './Before.tsx';
import { rehearsalModel, type RehearsalModel } from './model.ts';
import type * as PlayScript from './play.ts';
import { hashOf, readView } from './view.ts';
import { words } from './words.en.ts';

const PLACE = 'rehearsal';

/** Comes with the script that asks the questions. */
let views: Pick<typeof PlayScript, 'Asking' | 'Overview' | 'Result' | 'headOf'> | undefined;

/** @param base the folder that the site stands in */
export function Rehearsal({ base }: { readonly base: string }) {
  const ready = useReady();
  // Storage and clock exist in the browser alone.
  const model = useMemo(() => (ready ? inBrowser(base) : undefined), [ready]);
  useEffect(() => model && live(model), [model]);
  return (
    <div class="rehearsal retrieval" data-at={model?.view.value.at ?? 'before'}>
      {model === undefined ? <p role="status">{words.reading}</p> : <Page model={model} />}
      <NotKept place={PLACE} />
    </div>
  );
}

function inBrowser(base: string): RehearsalModel {
  return rehearsalModel({
    now: Date.now,
    underWay: underWayKeeper(),
    pasts: pastKeeper(),
    readAnswers,
    keepAnswer: async (answer) => {
      await keepAt(PLACE, answer);
      return faultAt(PLACE) === undefined;
    },
    loadIndex: () => loadIndex(base),
    loadPlay: async () => {
      const script = await import('./play.ts');
      views = script;
      return script;
    },
    units,
    base,
  });
}

/** Joins the model to address, clock, other tabs and leaving. Returns the way to stop. */
function live(model: RehearsalModel): () => void {
  const stopping = new AbortController();
  const { signal } = stopping;
  const inFront = (): boolean => document.visibilityState === 'visible';
  const follow = (): void => void model.show(readView(location.hash));
  const ticking = setInterval(() => inFront() && model.tick(), 1000);
  addEventListener('hashchange', follow, { signal });
  addEventListener('pagehide', model.rest, { signal });
  addEventListener('pageshow', (event) => event.persisted && model.heard(), { signal });
  document.addEventListener('visibilitychange', () => inFront() || model.rest(), { signal });
  const unwatch = [underWayKeeper(), pastKeeper()].map((keeper) => keeper.watch(model.heard));
  let stopAddress = (): void => undefined;
  void model.look(readView(location.hash)).then(() => {
    // What asks the questions comes while the offer is read. If it does not come, the press on Begin says so.
    void import('./play.ts').catch(() => undefined);
    if (signal.aborted || model.index.peek() === undefined) return;
    stopAddress = effect(() => {
      const hash = hashOf(model.view.value);
      if (location.hash === hash) return;
      // Back from a question leads to what was before it, and not to an address that shows nothing.
      if (hash === '') history.replaceState(history.state, '', location.pathname + location.search);
      else location.hash = hash;
    });
  });
  return () => {
    stopping.abort();
    clearInterval(ticking);
    stopAddress();
    for (const stop of unwatch) stop();
  };
}

function Page({ model }: { readonly model: RehearsalModel }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const view = model.view.value;
  const step = `${view.at} ${view.at === 'question' ? (model.rehearsal.value?.place ?? '') : ''}`;
  const shown = useRef(step);
  // The page changes length under the reader: put eyes and keyboard where the next thing is.
  useLayoutEffect(() => {
    if (shown.current === step) return;
    shown.current = step;
    heading.current?.closest('.rehearsal')?.scrollIntoView({ block: 'start' });
    heading.current?.focus({ preventScroll: true });
  }, [step]);
  const before = view.at === 'before' || views === undefined;
  const waits = model.rehearsal.value !== undefined;

  return (
    <>
      <h2 ref={heading} tabIndex={-1} class="rehearsal-head">
        {before ? (waits ? words.head.waits : words.head.ready) : views?.headOf(model)}
      </h2>
      {model.notKept.value && <p class="rehearsal-fault">{words.notKept[model.notKept.value]}</p>}
      {before || views === undefined ? (
        <Before model={model} />
      ) : view.at === 'question' ? (
        <views.Asking model={model} />
      ) : view.at === 'all' ? (
        <views.Overview model={model} />
      ) : (
        <views.Result model={model} begun={view.begun} />
      )}
    </>
  );
}
