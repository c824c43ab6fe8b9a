/** The clock of a meeting. The time is handed in, in milliseconds of any clock that goes forward. */

export interface Clock {
  /** What has run before the last pause [ms]. */
  readonly ran: number;
  /** Since when it runs; null while it stands. */
  readonly since: number | null;
}
export const STOPPED: Clock = { ran: 0, since: null };

/** A clock that was set back takes nothing away. */
export const elapsed = ({ ran, since }: Clock, now: number): number =>
  ran + (since === null ? 0 : Math.max(0, now - since));

export const started = (clock: Clock, now: number): Clock =>
  clock.since === null ? { ...clock, since: now } : clock;

export const paused = (clock: Clock, now: number): Clock => ({
  ran: elapsed(clock, now),
  since: null,
});

/** What is left of the minutes, in whole seconds, rounded up so that it begins full; below 0 it is over time. */
export const secondsLeft = (clock: Clock, minutes: number, now: number): number =>
  Math.ceil((minutes * 60_000 - elapsed(clock, now)) / 1000);

/** "9:05", and "+0:30" once the time is up. */
export function clockText(seconds: number): string {
  const over = seconds < 0;
  const all = Math.abs(seconds);
  const text = `${Math.floor(all / 60)}:${String(all % 60).padStart(2, '0')}`;
  return over ? `+${text}` : text;
}
