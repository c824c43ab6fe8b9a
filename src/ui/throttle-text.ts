/**
 * At most two announcements a second, the last one always spoken. A drag changes a sentence
 * sixty times a second; a screen reader that is told each one says none of them to the end.
 * The clock comes in from outside so that the rule can be tested without waiting.
 */
export const QUIET_MS = 500;

/** How long to wait before speaking, when the last announcement was at `last`. */
export function waitBeforeSpeaking(last: number, now: number): number {
  // A clock that was set back must not silence the page for hours.
  if (now < last) return 0;
  return Math.max(0, last + QUIET_MS - now);
}
