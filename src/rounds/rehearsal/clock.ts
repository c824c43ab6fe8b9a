/** A tick that comes later than this was not waited for: the device slept, or its clock was set [s]. */
const LONGEST_TICK = 5;

/** Adds up time while it is told that it runs. Whoever owns it says what time it is. */
export function stopwatch(now: () => number) {
  let last: number | undefined;
  return {
    /** @returns the seconds since the tick before, none at the first after a rest */
    tick: (): number => {
      const at = now();
      const passed = last === undefined ? 0 : (at - last) / 1000;
      last = at;
      return passed >= 0 && passed <= LONGEST_TICK ? passed : 0;
    },
    rest: (): void => {
      last = undefined;
    },
  };
}
