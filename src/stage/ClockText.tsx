import { useEffect, useState } from 'preact/hooks';
import { clockText, secondsLeft, type Clock } from '../meeting/clock.ts';
import { words } from './words.en.ts';

interface ClockTextProps {
  readonly clock: Clock;
  readonly minutes: number;
}

/** What is left of the time. It is looked at, not read out: nobody wants a voice every second. */
export function ClockText({ clock, minutes }: ClockTextProps) {
  const [, tick] = useState(0);
  useEffect(() => {
    if (clock.since === null) return undefined;
    const timer = setInterval(() => tick((count) => count + 1), 500);
    return () => clearInterval(timer);
  }, [clock]);
  const left = secondsLeft(clock, minutes, Date.now());
  const text = clockText(left);
  const said = left < 0 ? words.clock.over(text) : words.clock.left(text);
  return (
    <span class="stage-clock number" role="timer" aria-live="off">
      {clock.since === null ? words.clock.paused(said) : said}
    </span>
  );
}
