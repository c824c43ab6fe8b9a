import { useLayoutEffect, useRef } from 'preact/hooks';

/** What a first control takes below the head of its stage, its name and its buttons [px]. */
const FIRST_CONTROL = 130;

/**
 * The focus goes to the head of a stage that somebody went to: what they pressed is gone, and
 * without this the next Tab would start at the top of the page. A page opened by link keeps the
 * focus where it is. `step` sets it off again within a stage.
 *
 * The picture stays in sight: the page moves only when the picture, the head or the room for a first control below it
 * is not, and then to the top of the bench, where all of them stand.
 */
export function useArrival<E extends HTMLElement>(byHand: boolean, step: unknown = null) {
  const head = useRef<E>(null);
  // Before the page is painted, so that nobody sees the stage in the wrong place, and after all that the same press
  // redraws, so that the page is laid out once for it.
  useLayoutEffect(() => {
    const arrived = head.current;
    if (byHand && arrived) queueMicrotask(() => arrive(arrived));
  }, [step]);
  return head;
}

function arrive(arrived: HTMLElement): void {
  arrived.focus({ preventScroll: true });
  const bench = arrived.closest('.sim-bench');
  const picture = bench?.querySelector('.sim-picture');
  if (!bench || !picture) return;
  const seen = picture.getBoundingClientRect();
  const here = arrived.getBoundingClientRect();
  const beside = here.left >= seen.right;
  const top = beside ? 0 : seen.bottom;
  const inSight =
    seen.top >= 0 &&
    seen.bottom <= innerHeight &&
    here.top >= top &&
    here.bottom + FIRST_CONTROL <= innerHeight;
  if (!inSight) bench.scrollIntoView({ block: 'start' });
}
