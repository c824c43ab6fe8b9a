import type { RehearsalModel } from './model.ts';
import { words } from './play-words.en.ts';

/** Whole minutes, so that nothing moves beside a question. */
export function Clock({ model }: { readonly model: RehearsalModel }) {
  const on = model.rehearsal.value?.timed === true;
  const left = model.minutesLeft.value;
  const { clock } = words;
  return (
    <p class="rehearsal-clock" data-busy>
      <span role="timer">
        {on ? (left > 0 ? clock.left({ minutes: String(left) }) : clock.up) : clock.off}
      </span>{' '}
      <button type="button" class="quiet" onClick={model.switchClock}>
        {on ? clock.switchOff : clock.switchOn}
      </button>
    </p>
  );
}
