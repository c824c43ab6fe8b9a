import { useEffect, useRef } from 'preact/hooks';

/**
 * The focus goes to the head of a stage that somebody went to: what they pressed is gone, and
 * without this the next Tab would start at the top of the page. A page opened by link keeps the
 * focus where it is. `step` sets it off again within a stage.
 */
export function useArrival<E extends HTMLElement>(byHand: boolean, step: unknown = null) {
  const head = useRef<E>(null);
  useEffect(() => {
    if (!byHand) return;
    head.current?.focus({ preventScroll: true });
    // Only when it is out of sight: on a phone the picture above should stay where it is.
    head.current?.scrollIntoView({ block: 'nearest' });
  }, [step]);
  return head;
}
