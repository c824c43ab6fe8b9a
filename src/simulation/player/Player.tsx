import type { Signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { played, REAL_TIME, SLOW, started, steppedTo, type Playing } from './playing.ts';
import { words } from './words.en.ts';

interface PlayerProps {
  /** What it goes through, for the ear. */
  readonly name: string;
  /** The moment that the pictures show [s]; null while none is chosen. */
  readonly at: Signal<number | null>;
  readonly end: number;
  /** What happens in it, in order [s]; what comes after its end is passed over. */
  readonly events: () => readonly { readonly time: number }[];
}

/** Play and step through a story in time. Nothing moves until it is asked to. */
export function Player({ name, at, end, events }: PlayerProps) {
  const [playing, setPlaying] = useState<Playing>({ at: null, rate: 0 });
  const latest = useRef(playing);
  latest.current = playing;
  const put = (next: Playing) => {
    latest.current = next;
    setPlaying(next);
    at.value = next.at;
  };

  const times = () =>
    events()
      .map(({ time }) => time)
      .filter((time) => time <= end);

  useEffect(() => {
    if (playing.rate === 0) return undefined;
    // Where motion is not wanted, play goes from event to event instead of sliding.
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    if (still) {
      put({ at: steppedTo(times(), playing.at, 1), rate: 0 });
      return undefined;
    }
    let frame = 0;
    let last: number | null = null;
    const tick = (now: number) => {
      const elapsed = last === null ? 0 : (now - last) / 1000;
      last = now;
      const next = played(latest.current, elapsed, end);
      put(next);
      if (next.rate > 0) frame = requestAnimationFrame(tick);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [playing.rate]);

  const step = (by: 1 | -1) => () => put({ at: steppedTo(times(), at.peek(), by), rate: 0 });
  const play = (rate: number) => () =>
    put(
      playing.rate === rate
        ? { at: at.peek(), rate: 0 }
        : started({ ...playing, at: at.peek() }, rate, end),
    );
  return (
    <div class="player" role="group" aria-label={name}>
      <button type="button" class="quiet" onClick={step(-1)}>
        {words.before}
      </button>
      <button type="button" class="quiet" onClick={play(REAL_TIME)}>
        {playing.rate === REAL_TIME ? words.stop : words.play}
      </button>
      <button type="button" class="quiet" onClick={play(SLOW)}>
        {playing.rate === SLOW ? words.stop : words.slowly}
      </button>
      <button type="button" class="quiet" onClick={step(1)}>
        {words.next}
      </button>
    </div>
  );
}
