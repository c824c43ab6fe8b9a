import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { keepAt } from '../ui/keep-at.ts';
import { NotKept } from '../ui/NotKept.tsx';
import { useReady } from '../ui/use-units.ts';
import { readAnswers } from '../storage/answers.ts';
import { planKeeper } from '../storage/plan.ts';
import { progressKeeper } from '../storage/progress.ts';
import type { Asking } from './Asking.tsx';
import { loadIndex } from './load.ts';
import { todayModel, type TodayModel } from './model.ts';
import { Car } from './Car.tsx';
import { Offer } from './Offer.tsx';
import { Settings } from './Settings.tsx';
import { words } from './words.en.ts';

const PLACE = 'today';

/** Comes with the script that asks the questions. */
let Asks: typeof Asking | undefined;

/** @param base the folder that the site stands in */
export function Today({ base }: { readonly base: string }) {
  const ready = useReady();
  // Storage and clock exist in the browser alone.
  const model = useMemo(() => (ready ? inBrowser(base) : undefined), [ready]);
  useEffect(() => {
    // What asks the questions comes while the offer is read. If it does not come, the press on Begin says so.
    void model?.look().then(() => import('./play.ts').catch(() => undefined));
  }, [model]);
  return (
    <div class="today retrieval">
      {model === undefined ? <p role="status">{words.reading}</p> : <Page model={model} />}
      <NotKept place={PLACE} />
    </div>
  );
}

function inBrowser(base: string): TodayModel {
  const progress = progressKeeper();
  return todayModel({
    now: Date.now,
    minutesWest: (at) => new Date(at).getTimezoneOffset(),
    keeper: planKeeper(),
    done: () => progress.read().data.done,
    readAnswers,
    keepAnswer: (answer) => void keepAt(PLACE, answer),
    loadIndex: () => loadIndex(base),
    loadPlayer: async () => {
      const { Asking: loaded, loadSets, retrievalModel } = await import('./play.ts');
      Asks = loaded;
      return { loadSets, retrievalModel };
    },
    base,
  });
}

function Page({ model }: { readonly model: TodayModel }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const asking = model.asking.value;
  const stage = asking?.player.stage.value ?? 'offer';
  const step = `${stage} ${asking?.player.question.value?.id ?? ''}`;
  const shown = useRef(step);
  // The page changes length under the reader: put eyes and keyboard where the next thing is.
  useLayoutEffect(() => {
    if (shown.current === step) return;
    shown.current = step;
    heading.current?.closest('.today')?.scrollIntoView({ block: 'start' });
    heading.current?.focus({ preventScroll: true });
  }, [step]);

  return (
    <>
      <h2 ref={heading} tabIndex={-1} class="today-head">
        {headline(model)}
      </h2>
      {asking === undefined || Asks === undefined ? (
        <>
          <Offer model={model} />
          {/* Not before the offer above them: it would push them down. */}
          {(model.ready.value || model.miss.value !== undefined) && (
            <>
              <Car day={model.day.value} />
              <Settings model={model} />
            </>
          )}
        </>
      ) : (
        <Asks model={model} asking={asking} />
      )}
    </>
  );
}

function headline(model: TodayModel): string {
  const player = model.asking.value?.player;
  if (player === undefined) return model.kept.value ? words.head.paused : words.head.ready;
  const place = String(player.place.value);
  const of = String(player.count);
  if (player.stage.value === 'explained') return words.answered({ place, of });
  return player.stage.value === 'over' ? words.head.over : words.asking({ place, of });
}
