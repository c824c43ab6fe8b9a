import { Ask } from '../../widgets/retrieval/Ask.tsx';
import { Clock } from './Clock.tsx';
import type { RehearsalModel } from './model.ts';
import { words } from './play-words.en.ts';
import { hashOf } from './view.ts';

/** The question on show. It is answered as everywhere, but nothing is told of the answer. */
export function Asking({ model }: { readonly model: RehearsalModel }) {
  const player = model.player.value;
  const asked = player?.question.value;
  const one = model.rehearsal.value;
  if (player === undefined || asked === undefined || one === undefined) return null;
  const { place, items } = one;
  const flagged = items[place]?.flagged === true;
  const leave = (): void => void model.show({ at: 'before' });
  const here = { ...player, check: model.onward, uncover: leave };
  return (
    <>
      <Clock model={model} />
      <div class="retrieval-panel">
        <Ask
          key={`${one.begun} ${place}`}
          model={here}
          asked={asked}
          id="rehearsal"
          row={
            <>
              <div class="rehearsal-steps">
                <button
                  type="button"
                  class="quiet"
                  disabled={place === 0}
                  onClick={() => model.goTo(place - 1)}
                >
                  {words.before}
                </button>
                <button type="submit" class="act">
                  {words.next}
                </button>
              </div>
              <button type="button" class="quiet" onClick={model.flag}>
                {flagged ? words.unflag : words.flag}
              </button>
            </>
          }
        />
        <p class="rehearsal-ways">
          <a href={hashOf({ at: 'all' })}>{words.all}</a>{' '}
          <button type="button" class="quiet" onClick={leave}>
            {words.leave}
          </button>
        </p>
      </div>
    </>
  );
}
