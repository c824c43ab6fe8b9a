import { useEffect, useRef, useState } from 'preact/hooks';
import { listOf } from '../../quantity/lists.ts';
import type { Standing } from '../../quiz/rehearsal/standing.ts';
import { Clock } from './Clock.tsx';
import type { RehearsalModel } from './model.ts';
import { words } from './play-words.en.ts';
import { runsOf } from './runs.ts';

const markOf: Readonly<Record<Standing, 'answered' | 'half' | 'open'>> = {
  answered: 'answered',
  unsure: 'half',
  unread: 'half',
  open: 'open',
};

/** All questions of a rehearsal, how each stands, and the way to hand in. */
export function Overview({ model }: { readonly model: RehearsalModel }) {
  const [asks, setAsks] = useState(false);
  const { items, place } = model.rehearsal.value ?? { items: [], place: 0 };
  const standings = model.standings.value;
  const { overview } = words;
  const answered = standings.filter((one) => one === 'answered').length;
  const flags = items.filter(({ flagged }) => flagged).length;
  const firstOpen = standings.findIndex((one) => one !== 'answered');
  const open = items.length - answered;
  return (
    <div class="retrieval-panel">
      <Clock model={model} />
      <p>
        {overview.counts({ answered: String(answered), open: String(open) })}{' '}
        {flags > 0 && overview.flags({ flags: String(flags) })}
      </p>
      <div class="retrieval-row">
        <button type="button" class="act" onClick={() => model.goTo(place)}>
          {overview.back({ place: String(place + 1) })}
        </button>
        {firstOpen >= 0 && (
          <button type="button" class="quiet" onClick={() => model.goTo(firstOpen)}>
            {overview.firstOpen}
          </button>
        )}
        <button type="button" class="quiet" aria-expanded={asks} onClick={() => setAsks(true)}>
          {words.handIn.ask}
        </button>
      </div>
      {asks && <HandIn model={model} notYet={() => setAsks(false)} />}
      <ol class="rehearsal-all">
        {items.map(({ id, flagged }, i) => {
          const standing = standings[i] ?? 'open';
          const label = (flagged ? overview.flagged : overview.standing)[standing];
          return (
            <li key={id}>
              <button
                type="button"
                class={`rehearsal-place ${markOf[standing]}`}
                aria-label={label({ place: String(i + 1) })}
                aria-current={i === place ? 'step' : undefined}
                onClick={() => model.goTo(i)}
              >
                {i + 1}
                {flagged && <Flag />}
              </button>
            </li>
          );
        })}
      </ol>
      <Legend />
    </div>
  );
}

const Flag = () => (
  <svg class="rehearsal-flag" viewBox="0 0 12 14" aria-hidden="true">
    <path d="M2 13V1l9 3.5L2 8" />
  </svg>
);

function Legend() {
  const { legend } = words.overview;
  return (
    <ul class="rehearsal-legend">
      {(['answered', 'half', 'open'] as const).map((mark) => (
        <li key={mark}>
          <span class={`rehearsal-place ${mark}`} aria-hidden="true" /> {legend[mark]}
        </li>
      ))}
      <li>
        <span class="rehearsal-place open" aria-hidden="true">
          <Flag />
        </span>{' '}
        {legend.flagged}
      </li>
    </ul>
  );
}

interface HandInProps {
  readonly model: RehearsalModel;
  readonly notYet: () => void;
}

/** What would be missing, before anything is final. */
function HandIn({ model, notYet }: HandInProps) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    head.current?.focus({ preventScroll: true });
    head.current?.parentElement?.scrollIntoView({ block: 'nearest' });
  }, []);
  const { handIn } = words;
  const standings = model.standings.value;
  const items = model.rehearsal.value?.items ?? [];
  const told = (
    sentence: (p: { count: string; places: string }) => string,
    is: (at: number) => boolean,
  ): readonly string[] => {
    const places = items.flatMap((_, at) => (is(at) ? [at + 1] : []));
    if (places.length === 0) return [];
    const printed = runsOf(places).map(([first, last]) =>
      first === last ? String(first) : handIn.run({ first: String(first), last: String(last) }),
    );
    return [sentence({ count: String(places.length), places: listOf(printed) })];
  };
  const missing = (['open', 'unsure', 'unread'] as const).flatMap((standing) =>
    told(handIn[standing], (at) => standings[at] === standing),
  );
  const flagged = told(handIn.flagged, (at) => items[at]?.flagged === true);
  return (
    <section class="rehearsal-hand-in">
      <h3 ref={head} tabIndex={-1}>
        {handIn.head}
      </h3>
      {missing.length === 0 && <p>{handIn.complete}</p>}
      {[...missing, ...flagged].map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>{handIn.final}</p>
      <div class="retrieval-row">
        <button type="button" class="act" onClick={() => void model.handIn()}>
          {handIn.yes}
        </button>
        <button type="button" class="quiet" onClick={notYet}>
          {handIn.no}
        </button>
      </div>
    </section>
  );
}
