import type { Signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { LiveText } from '../../ui/LiveText.tsx';
import { format } from '../../quantity/print.ts';
import { pressure, seconds, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { END, type EngagementModel, type Run } from './model.ts';
import { played, REAL_TIME, SLOW, started, steppedTo, type Playing } from './player.ts';

interface PlayerProps {
  readonly model: EngagementModel;
  readonly cursor: Signal<number | null>;
}

const nearest = (times: readonly number[], at: number): number => {
  const step = (times[1] ?? 1) - (times[0] ?? 0);
  return Math.max(0, Math.min(times.length - 1, Math.round(at / step)));
};

function reading(run: Run, i: number, system: UnitSystem): string {
  const turbine = format(run.speeds.turbine[i] ?? 0, speed, system);
  const has = format(run.pressure[i] ?? 0, pressure, system);
  return `turbine ${turbine}, clutch ${has}`;
}

/** Scrub, play and step through the seven seconds. Nothing moves until it is asked to. */
export function Player({ model, cursor }: PlayerProps) {
  const system = useUnits();
  const [playing, setPlaying] = useState<Playing>({ at: null, rate: 0 });
  const latest = useRef(playing);
  latest.current = playing;
  const put = (next: Playing) => {
    latest.current = next;
    setPlaying(next);
    cursor.value = next.at;
  };

  useEffect(() => {
    if (playing.rate === 0) return undefined;
    // Where motion is not wanted, play goes from event to event instead of sliding.
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    if (still) {
      put({ at: steppedTo(eventTimes(), playing.at, 1), rate: 0 });
      return undefined;
    }
    let frame = 0;
    let last: number | null = null;
    const tick = (now: number) => {
      const elapsed = last === null ? 0 : (now - last) / 1000;
      last = now;
      const next = played(latest.current, elapsed, END);
      put(next);
      if (next.rate > 0) frame = requestAnimationFrame(tick);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [playing.rate]);

  const eventTimes = (): readonly number[] =>
    model.hot
      .peek()
      .solved.events.map(({ time }) => time)
      .filter((time) => time <= END);
  const at = cursor.value ?? 0;
  const i = nearest(model.times, at);
  const hotEvent = [...model.hot.value.solved.events]
    .reverse()
    .find(({ time }) => time <= at + 1e-6);
  const words = `At ${format(at, seconds, system)}: cold, ${reading(model.cold.value, i, system)}; hot, ${reading(model.hot.value, i, system)}. ${hotEvent ? `Last event in the hot run: ${hotEvent.event}.` : 'Nothing has happened yet.'}`;
  return (
    <div class="player" role="group" aria-label="Go through the seven seconds">
      <label class="player-scrub slider-row">
        <span>Moment</span>
        <input
          type="range"
          min={0}
          max={END}
          step={0.05}
          value={at}
          aria-valuetext={format(at, seconds, system)}
          onInput={(event) => put({ at: Number(event.currentTarget.value), rate: 0 })}
        />
      </label>
      <div class="player-buttons">
        <button
          type="button"
          class="quiet"
          onClick={() => put({ at: steppedTo(eventTimes(), cursor.peek(), -1), rate: 0 })}
        >
          Event before
        </button>
        <button
          type="button"
          onClick={() =>
            put(
              playing.rate === REAL_TIME
                ? { at: cursor.peek(), rate: 0 }
                : started({ ...playing, at: cursor.peek() }, REAL_TIME, END),
            )
          }
        >
          {playing.rate === REAL_TIME ? 'Stop here' : 'Play'}
        </button>
        <button
          type="button"
          onClick={() =>
            put(
              playing.rate === SLOW
                ? { at: cursor.peek(), rate: 0 }
                : started({ ...playing, at: cursor.peek() }, SLOW, END),
            )
          }
        >
          {playing.rate === SLOW ? 'Stop here' : 'Play slowly'}
        </button>
        <button
          type="button"
          class="quiet"
          onClick={() => put({ at: steppedTo(eventTimes(), cursor.peek(), 1), rate: 0 })}
        >
          Next event
        </button>
      </div>
      <LiveText visible text={words} />
    </div>
  );
}
