import { REHEARSAL_MINUTES, traitNames } from '../../quiz/rehearsal/blueprint.ts';
import { traitsOf } from '../../quiz/rehearsal/draw.ts';
import type { Rehearsal } from '../../storage/rehearsals.ts';
import { dateAndTimeOf } from '../../ui/dates.ts';
import { Missed } from '../Missed.tsx';
import type { RehearsalModel } from './model.ts';
import { hashOf, readView } from './view.ts';
import { words } from './words.en.ts';

/** What waits or would come, the button that begins it, and the rehearsals so far. */
export function Before({ model }: { readonly model: RehearsalModel }) {
  const miss = model.miss.value;
  const again = (): void => void model.look(readView(location.hash));
  const dropped = model.dropped.value !== undefined && model.rehearsal.value === undefined;
  return (
    <>
      {miss !== undefined && <Missed miss={miss} again={again} />}
      {model.index.value === undefined ? (
        miss === undefined && <p role="status">{words.reading}</p>
      ) : model.rehearsal.value === undefined ? (
        <Fresh model={model} />
      ) : (
        <Paused model={model} one={model.rehearsal.value} />
      )}
      <p role="status">
        {model.loading.value && words.loading}
        {dropped && (
          <>
            {words.dropped}{' '}
            <button type="button" class="quiet" onClick={model.bringBack}>
              {words.bringBack}
            </button>
          </>
        )}
      </p>
      <PastOnes past={model.past.value} />
    </>
  );
}

function Fresh({ model }: { readonly model: RehearsalModel }) {
  const drawn = model.next.value;
  const has = traitsOf(drawn);
  const size = { questions: String(drawn.length), minutes: String(REHEARSAL_MINUTES) };
  return (
    <>
      <p>
        {words.size(size)}{' '}
        {traitNames.map((trait) =>
          has[trait] > 0 ? `${words[trait]({ questions: String(has[trait]) })} ` : '',
        )}
      </p>
      <button type="button" class="act rehearsal-begin" onClick={() => void model.begin()}>
        {words.begin}
      </button>
    </>
  );
}

function Paused({ model, one }: { readonly model: RehearsalModel; readonly one: Rehearsal }) {
  const { items, place } = one;
  const answers = items.filter(({ given }) => given !== undefined).length;
  const flags = items.filter(({ flagged }) => flagged).length;
  const minutes = Math.floor(model.seconds.value / 60);
  return (
    <>
      <p>
        {words.waits({ place: String(place + 1), of: String(items.length) })}{' '}
        {answers > 0 && `${words.has({ answers: String(answers) })} `}
        {flags > 0 && `${words.flagged({ flags: String(flags) })} `}
        {minutes > 0 && words.ran({ minutes: String(minutes) })}
      </p>
      <div class="retrieval-row">
        <button type="button" class="act" onClick={() => void model.show({ at: 'question' })}>
          {words.goOn}
        </button>
        <button type="button" class="quiet" onClick={model.drop}>
          {words.drop}
        </button>
      </div>
    </>
  );
}

function PastOnes({ past }: { readonly past: readonly Rehearsal[] }) {
  if (past.length === 0) return null;
  return (
    <section class="rehearsal-past" aria-labelledby="rehearsal-past">
      <h3 id="rehearsal-past">{words.past.title}</h3>
      <ul>
        {past.map(({ begun, ended, items }) => {
          const right = items.filter(({ result }) => result === 'right').length;
          return (
            <li key={begun}>
              <a href={hashOf({ at: 'result', begun })}>{dateAndTimeOf(ended ?? begun)}</a>{' '}
              {words.past.result({ right: String(right), asked: String(items.length) })}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
