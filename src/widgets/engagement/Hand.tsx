import { words as names } from '../../car/words.en.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import { LiveText } from '../../ui/LiveText.tsx';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { END, type EngagementModel, type Run } from './model.ts';
import { played, REAL_TIME, SLOW, started, steppedTo, type Playing } from './player.ts';
import { words as texts } from './words.en.ts';

const words = texts.player;

const nearest = (times: readonly number[], at: number): number => {
  const step = (times[1] ?? 1) - (times[0] ?? 0);
  return Math.max(0, Math.min(times.length - 1, Math.round(at / step)));
};

const reading = (run: Run, i: number, system: UnitSystem) => {
  const print = printer(system);
  return {
    turbine: print(run.speeds.turbine[i] ?? 0, speed),
    has: print(run.pressure[i] ?? 0, pressure),
  };
};

/**
 * Play and step through the seven seconds; the cursor of the chart is the handle for anything between.
 * Nothing moves until it is asked to.
 */
export function Hand({ model }: { readonly model: EngagementModel }) {
  const { cursor } = model;
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
  const cold = reading(model.cold.value, i, system);
  const hot = reading(model.hot.value, i, system);
  const time = printer(system)(at, seconds);
  const moment = [
    words.reading({
      time,
      cold: cold.turbine,
      coldHas: cold.has,
      hot: hot.turbine,
      hotHas: hot.has,
    }),
    hotEvent ? words.last({ event: names.events[hotEvent.event] }) : words.nothing,
  ].join(' ');
  const step = (by: 1 | -1) => () =>
    put({ at: steppedTo(eventTimes(), cursor.peek(), by), rate: 0 });
  const play = (rate: number) => () =>
    put(
      playing.rate === rate
        ? { at: cursor.peek(), rate: 0 }
        : started({ ...playing, at: cursor.peek() }, rate, END),
    );
  return (
    <div class="player" role="group" aria-label={words.name}>
      <div class="player-buttons">
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
      <LiveText text={moment} />
    </div>
  );
}
