import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { CopyLink } from '../ui/CopyLink.tsx';
import { FootBar } from '../ui/FootBar.tsx';
import { Later } from '../simulation/Later.tsx';
import type { BenchCase } from './bench-case.ts';
import { Conclude } from './Conclude.tsx';
import { Known } from './Known.tsx';
import { Looks } from './Looks.tsx';
import { makeModel, type CaseModel } from './model.ts';
import { Measure } from './Measure.tsx';
import { Talk } from './Talk.tsx';
import { words } from './words.en.ts';

const loadOutcome = () => import('./Outcome.tsx').then(({ Outcome }) => Outcome);

interface BayProps {
  readonly bench: BenchCase;
  readonly search: string;
  readonly onWall: boolean;
}

/** One car from complaint to conclusion. */
export function Bay({ bench, search, onWall }: BayProps) {
  const model = useMemo(() => makeModel(bench), [bench]);
  const open = useSignal('');
  const shut = useSignal(onWall && model.ended.peek());
  const { complaint, bar } = words;
  const ended = model.ended.value;
  const { minutes } = model.standing.value;
  if (shut.value) return <Shut model={model} open={() => (shut.value = false)} />;
  return (
    <div class="case-columns" data-busy={ended ? undefined : true}>
      <div class="case-column case-head">
        <h2>{bench.title}</h2>
        <p>{complaint.car({ car: bench.car, selection: complaint.selection[bench.selection] })}</p>
        <figure class="case-says">
          <figcaption>{complaint.says}</figcaption>
          <blockquote>{bench.complaint}</blockquote>
        </figure>
        <p class="muted">
          {complaint.transmission[bench.transmission]}{' '}
          <a href="/model/#which-clutch-in-which-gear">{complaint.chart}</a>
        </p>
        {!ended && <Known model={model} />}
      </div>
      <div class="case-column">
        {ended ? (
          <>
            <Later load={loadOutcome} props={{ model }} />
            <CopyLink id="case-link" search={() => search} label={words.copyLink} />
          </>
        ) : (
          <>
            <div class="case-work">
              <Talk model={model} />
              <Looks model={model} />
              <Measure model={model} open={open} />
              <FootBar class="case-bar" label={bar.label}>
                <strong>{bar.minutes({ minutes: String(Math.round(minutes)) })}</strong>
                <a class="act" href="#case-conclude">
                  {bar.ready}
                </a>
              </FootBar>
            </div>
            <Conclude model={model} />
          </>
        )}
        {model.unkept.value && <p role="status">{words.unkept}</p>}
      </div>
    </div>
  );
}

interface ShutProps {
  readonly model: CaseModel;
  readonly open: () => void;
}

/** In the place of an answer that is out. */
function Shut({ model, open }: ShutProps) {
  const { why, again, answer } = words.shut;
  const fromStart = (): void => {
    model.again();
    open();
  };
  return (
    <>
      <p>{why}</p>
      <p class="case-after">
        <button type="button" class="act" onClick={fromStart}>
          {again}
        </button>
        <button type="button" class="quiet" onClick={open}>
          {answer}
        </button>
      </p>
    </>
  );
}
